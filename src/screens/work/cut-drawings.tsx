import type { PlanStep } from '../../core/correction/plan/plan';
import type { Part } from '../../core/part/part';
import { shop } from '../../state/shop';
import { PressView } from '../../widgets/drawings/press-view';
import { WedgeProfile } from '../../widgets/drawings/wedge-profile';
import { highSideName, lowSideName } from '../../words/faces';
import { place, deviation as shown } from '../../words/numbers';
import { cutInView } from './cut-in-view';

interface CutDrawingsProps {
  readonly step: PlanStep;
  readonly part: Part;
}

/** The cut from above, with the place to press, and from the side. */
export function CutDrawings({ step, part }: CutDrawingsProps) {
  const { deviation, size } = shop.value.units;
  const { face, highSide, wedge } = step;
  const view = cutInView(step, part.block);
  const { corners } = view;
  const text = (corner: keyof typeof corners) => shown(corners[corner].removal, deviation);
  const amount = shown(wedge, deviation);
  const [high, low] = [highSideName(highSide), lowSideName(highSide)];
  return (
    <>
      <PressView
        {...view.extent}
        edgeNames={view.edges}
        press={view.press}
        corners={{
          topLeft: text('topLeft'),
          topRight: text('topRight'),
          bottomLeft: text('bottomLeft'),
          bottomRight: text('bottomRight'),
        }}
        removalShare={view.shares}
        highEdges={view.highEdges}
        pressDistances={view.distances((distance) => place(distance, size))}
        label={`The ${face} from above, through the part: ${amount} comes off at the ${high}, nothing at the ${low}.`}
      />
      <WedgeProfile
        highName={high}
        lowName={low}
        amount={amount}
        highAt={view.highEdges.includes('right') ? 'right' : 'left'}
      />
    </>
  );
}
