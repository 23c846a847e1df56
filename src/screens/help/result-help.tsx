import { ChanceCurve } from '../../widgets/drawings/help/chance-curve';
import { LeanPerLength } from '../../widgets/drawings/help/lean-per-length';
import { SquareZone } from '../../widgets/drawings/help/square-zone';
import { PressView } from '../../widgets/drawings/press-view';
import { WedgeProfile } from '../../widgets/drawings/wedge-profile';
import { ZoneScale, type ZoneScaleProps } from '../../widgets/drawings/zone-scale';
import type { HelpTopic } from './topics';

type ResultTopic = Extract<
  HelpTopic,
  | 'out of square'
  | 'flatness'
  | 'doubt'
  | 'verdict'
  | 'chance'
  | 'per 100 mm'
  | 'high edge'
  | 'press point'
>;

const NOTHING = { topLeft: '', topRight: '', bottomLeft: '', bottomRight: '' } as const;

/** A value with its doubt of 1.2 beside a limit of 5. */
function Whisker(props: Pick<ZoneScaleProps, 'value' | 'verdict' | 'label'>) {
  const range = { low: props.value - 1.2, high: props.value + 1.2 };
  return <ZoneScale {...props} {...range} limit={5} limitText="limit" />;
}

/** What a result means. */
export function ResultHelp({ topic }: { readonly topic: ResultTopic }) {
  switch (topic) {
    case 'out of square':
      return (
        <>
          <SquareZone />
          <p>
            The face fits between two planes that are exactly square to what the block stands on.
            How far these are apart, over the whole face, is the number that the drawing limits (ISO
            1101). For parallel faces the two planes are parallel to the datum.
          </p>
        </>
      );
    case 'flatness':
      return (
        <p>
          The face fits between two parallel planes, laid whichever way brings them closest: how far
          these are apart is its flatness (ISO&nbsp;1101; ISO 12781-1, minimum zone). It needs no
          datum, and says nothing of square or parallel. The places that touch the planes hold them;
          noise in the readings makes the zone rather too wide, and what lies between the places is
          not seen.
        </p>
      );
    case 'doubt':
      return (
        <>
          <Whisker
            value={3}
            verdict="in"
            label="A value with a whisker that reaches as far up as down."
          />
          <p>
            The truth lies within the whisker in about 95 of 100 such inspections. It comes from the
            instruments, the seating and the plate as the kit has them; ‘Show the working’ has each
            share. Seating again makes it smaller.
          </p>
        </>
      );
    case 'verdict':
      return (
        <>
          <Whisker value={2.4} verdict="in" label="In: the whisker ends below the limit." />
          <Whisker
            value={4.8}
            verdict="too close to call"
            label="Too close to call: the whisker reaches over the limit."
          />
          <Whisker value={7.6} verdict="out" label="Out: all of the whisker is beyond the limit." />
          <p>
            ‘In’ and ‘out’ are only said where it is nearly sure. In between it is too close to
            call: seat it again, or read with less doubt. How sure is a setting of the kit.
          </p>
        </>
      );
    case 'chance':
      return (
        <>
          <ChanceCurve />
          <p>
            The readings leave many values possible, the one found being the likeliest. The share of
            them within the limit is the chance that the part is in (JCGM 106).
          </p>
        </>
      );
    case 'per 100 mm':
      return (
        <>
          <LeanPerLength />
          <p>
            The lean as a rate: how much further out the side stands 100 mm higher up. Over 50 mm it
            is half as much, so that parts of any height can be held against each other.
          </p>
        </>
      );
    case 'high edge':
      return (
        <>
          <WedgeProfile
            highName="high edge"
            lowName="nothing off here"
            amount="most"
            label="A wedge under the block: thickest at the high edge, nothing at the other."
          />
          <p>
            To stand a leaning side square, a wedge has to come off the face below it: most at the
            high edge, nothing at the edge across. Taking it off tapers the block from that face to
            the opposite one by as much.
          </p>
        </>
      );
    case 'press point':
      return (
        <>
          <PressView
            across={60}
            up={40}
            edgeNames={{ left: 'high edge', right: 'right', top: 'back', bottom: 'front' }}
            press={{ across: -10, up: 0 }}
            corners={NOTHING}
            removalShare={{ topLeft: 1, bottomLeft: 1, topRight: 0, bottomRight: 0 }}
            highEdges={['left']}
            pressDistances={{ left: 'a third' }}
            label="The face from above: pressed a third of its length in from the high edge."
          />
          <p>
            The abrasive cuts where it is pressed. Pressed a third of the length in from the high
            edge, the cut feathers out to nothing at the far edge. Nearer to the edge than that the
            far edge lifts, and the high edge is rounded. This takes the bed as even and the block
            as stiff.
          </p>
        </>
      );
  }
}
