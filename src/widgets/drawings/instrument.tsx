import { type BlockLayout, onFace, type Side, yOf } from './block-layout';
import { ContactPoint } from './contact-point';
import { DIAL_RADIUS, DialIndicator } from './dial-indicator';
import { at, clamp, LINE } from './geometry';
import { Readings } from './readings';
import { Stand } from './stand';

/** What reads the block. */
export interface DrawnInstrument {
  readonly kind: 'nose comparator' | 'column';
  /** The face that it touches. */
  readonly side: Side;
  /** mm above the base; without it the nose is not drawn. */
  readonly noseHeight?: number;
  /** mm above the base; a height beyond the block is drawn at its end. */
  readonly indicatorHeights: readonly number[];
  /** Which of the heights the indicator stands at; the first where left out. */
  readonly active?: number;
  /** Text beside each height, in the order of the heights. */
  readonly readings?: readonly (string | undefined)[];
}

/** The height that the indicator stands at. */
export function activeHeight({ indicatorHeights, active = 0 }: DrawnInstrument) {
  return indicatorHeights[activeIndex(indicatorHeights, active)];
}

function activeIndex(heights: readonly number[], active: number): number {
  return clamp(Math.trunc(active), 0, heights.length - 1);
}

interface InstrumentProps {
  readonly layout: BlockLayout;
  readonly instrument: DrawnInstrument;
}

/** The comparator or column with its indicator at the active height, touching the face. */
export function Instrument({ layout, instrument }: InstrumentProps) {
  const { kind, side, noseHeight, indicatorHeights, active = 0, readings = [] } = instrument;
  const out = side === 'left' ? -1 : 1;
  const { pillar, plate, top } = layout;
  const contacts = indicatorHeights.map((height) => onFace(layout, side, yOf(layout, height)));
  const touching = contacts[activeIndex(indicatorHeights, active)];
  const nose =
    noseHeight === undefined
      ? undefined
      : onFace(layout, side, Math.min(yOf(layout, noseHeight), plate - 5));
  const dial = {
    x: pillar - out * (DIAL_RADIUS + 12),
    y: Math.min(touching?.y ?? plate, plate - DIAL_RADIUS - 3),
  };
  const highest = Math.min((plate + 2 * top) / 3, ...contacts.map(({ y }) => y - 22));
  return (
    <g>
      <Stand
        kind={kind}
        x={pillar}
        top={kind === 'column' ? Math.min(top, highest) : highest}
        out={out}
        plate={plate}
      />
      {nose && <Nose tip={nose} pillar={pillar} out={out} />}
      {touching && <DialIndicator dial={dial} tip={touching} pillar={pillar} />}
      <Readings
        contacts={contacts}
        touching={touching}
        dial={dial.y}
        floor={nose === undefined ? plate - LINE : nose.y - 6}
        texts={readings}
        out={out}
      />
      {contacts.map((point, index) => (
        <ContactPoint key={`${index} ${point.y}`} point={point} lit={false} />
      ))}
      {touching && <ContactPoint point={touching} lit />}
    </g>
  );
}

interface NoseProps {
  readonly tip: { readonly x: number; readonly y: number };
  readonly pillar: number;
  readonly out: 1 | -1;
}

/** A rod from the pillar with a round end against the face. */
function Nose({ tip, pillar, out }: NoseProps) {
  const sweep = out === 1 ? 0 : 1;
  const [start, y] = [at(tip.x + out * 5), at(tip.y)];
  return (
    <path
      class="drawing-tool"
      d={`M${at(pillar)} ${at(y - 5)}H${start}A5 5 0 0 ${sweep} ${start} ${at(y + 5)}H${at(pillar)}Z`}
    />
  );
}
