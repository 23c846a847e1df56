import { useEffect, useRef } from 'preact/hooks';
import { useRoute } from 'preact-iso';
import { workOut } from '../../state/answers';
import type { Link } from '../../state/chain';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { ENTRY_DONE, goToFirstEmpty } from '../../widgets/number-fields';
import { Page } from '../../widgets/page';
import { AnswerPart } from '../answer/answer-part';
import { to } from '../paths';
import { useUnitsButton } from '../units-button';
import { Message, WithPart } from '../with-part';
import { CorrectionPart } from '../work/correction-part';
import { ReadingsPart } from './readings-part';
import { SoFar } from './so-far';

/** At the plate: the readings go in, what they mean comes out. */
export function PlateScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => {
        const inspection = links.find(
          (link): link is InspectionRecord =>
            link.kind === 'inspection' && link.id === params.inspection,
        );
        if (inspection === undefined) {
          return <Message title={part.entry.name} text="These readings are not in this browser." />;
        }
        return <Plate key={inspection.id} part={part} inspection={inspection} links={links} />;
      }}
    </WithPart>
  );
}

interface PlateProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly links: readonly Link[];
}

function Plate({ part, inspection, links }: PlateProps) {
  const worked = workOut(inspection, part.entry);
  const units = useUnitsButton({ part, inspection });
  const readings = useRef<HTMLDivElement>(null);
  const answer = useRef<HTMLDivElement>(null);
  const showAnswer = () => answer.current?.scrollIntoView();

  useEffect(() => {
    const root = readings.current;
    if (root === null) return;
    goToFirstEmpty(root);
    root.addEventListener(ENTRY_DONE, showAnswer);
    return () => root.removeEventListener(ENTRY_DONE, showAnswer);
  }, []);

  return (
    <Page
      title={part.entry.name.trim() || 'Readings'}
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      pinned={<SoFar worked={worked} onShow={showAnswer} />}
      wide
    >
      {units.panel}
      <div class="plate">
        <div class="plate-part" ref={readings}>
          <ReadingsPart part={part} inspection={inspection} worked={worked} />
        </div>
        <div class="plate-part" ref={answer}>
          <AnswerPart part={part} inspection={inspection} worked={worked} />
        </div>
        <div class="plate-part">
          <CorrectionPart part={part} inspection={inspection} worked={worked} links={links} />
        </div>
      </div>
    </Page>
  );
}
