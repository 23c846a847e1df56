import { ContactPoint } from '../contact-point';
import { DialIndicator } from '../dial-indicator';
import { Drawing } from '../drawing';
import { DRAWING_WIDTH } from '../geometry';
import { PLATE_DEPTH, Plate } from '../plate';
import { Stand } from '../stand';

interface OverAFaceProps {
  /** What the block stands on. */
  readonly on: 'plate' | 'jacks';
}

const PLATE = 178;
const TOP = 84;
const [LEFT, RIGHT] = [44, 220];
const PILLAR = 282;
const PLACES = [64, 104, 144, 184];
const TOUCHED = 144;

/** An indicator on a stand, passed over the upper face of a block from place to place. */
export function OverAFace({ on }: OverAFaceProps) {
  const foot = on === 'plate' ? PLATE : PLATE - 26;
  const label =
    on === 'plate'
      ? 'A block on the plate, an indicator on a stand passed over its upper face.'
      : 'A block on three jacks, its upper face levelled, an indicator on a stand passed over it.';
  return (
    <Drawing height={PLATE + PLATE_DEPTH + 4} label={label}>
      <Plate from={4} to={DRAWING_WIDTH - 4} y={PLATE} />
      {on === 'jacks' &&
        [LEFT + 24, (LEFT + RIGHT) / 2, RIGHT - 24].map((x) => (
          <path key={x} class="drawing-tool" d={`M${x} ${foot}l12 26h-24Z`} />
        ))}
      <path class="drawing-metal" d={`M${LEFT} ${foot}H${RIGHT}V${TOP}H${LEFT}Z`} />
      <Stand kind="nose comparator" x={PILLAR} top={14} plate={PLATE} out={1} />
      <path class="drawing-tool" d={`M${TOUCHED} 28h${PILLAR - TOUCHED}v7h-${PILLAR - TOUCHED}Z`} />
      <DialIndicator dial={{ x: TOUCHED, y: 32 }} tip={{ x: TOUCHED, y: TOP }} pillar={PILLAR} />
      {PLACES.map((x) => (
        <ContactPoint key={x} point={{ x, y: TOP }} lit={x === TOUCHED} />
      ))}
    </Drawing>
  );
}
