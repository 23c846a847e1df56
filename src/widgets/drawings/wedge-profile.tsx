import { DimensionLine } from './dimension';
import { Drawing } from './drawing';
import { at, boldWidth, DRAWING_WIDTH, LINE, outline } from './geometry';
import { PLATE_DEPTH, Plate } from './plate';
import { Text } from './text';

interface WedgeProfileProps {
  /** Text under the end that is high. */
  readonly highName: string;
  /** Text under the end where the wedge feathers to nothing. */
  readonly lowName: string;
  /** Text of the wedge's thickness at the high end. */
  readonly amount: string;
  /** The end of the drawing that is high; the left where left out. */
  readonly highAt?: 'left' | 'right';
  readonly label?: string;
}

const TOP = 6;
const HEIGHT = 76;
/** The wedge is drawn this thick whatever it is. */
const WEDGE = 26;
const FOOT = TOP + HEIGHT;

/** The side of the part on the paper, with the wedge that is to come off its underside. */
export function WedgeProfile({ highName, lowName, amount, highAt, label }: WedgeProfileProps) {
  // From the high end inward: 1 runs right, −1 runs left.
  const inward = highAt === 'right' ? -1 : 1;
  const from = (high: number) => (inward === 1 ? high : DRAWING_WIDTH - high);
  const room = Math.min(140, boldWidth(amount) + 24);
  const [high, low] = [from(room), from(DRAWING_WIDTH - 12)];
  const cut = FOOT - WEDGE;
  const names = FOOT + PLATE_DEPTH + LINE / 2 + 4;
  // Two long names stand one under the other.
  const fit = boldWidth(`${highName}  ${lowName}`) <= DRAWING_WIDTH - 20;
  const lowNameAt = fit ? names : names + LINE;
  const dimension = high - inward * 11;
  return (
    <Drawing height={lowNameAt + LINE / 2 + 4} label={label}>
      <Plate from={4} to={DRAWING_WIDTH - 4} y={FOOT} />
      <path
        class="drawing-metal"
        d={outline([
          { x: high, y: TOP },
          { x: low, y: TOP },
          { x: low, y: FOOT },
          { x: high, y: cut },
        ])}
      />
      <path
        class="drawing-wedge"
        d={outline([
          { x: high, y: cut },
          { x: low, y: FOOT },
          { x: high, y: FOOT },
        ])}
      />
      <WedgeHatch high={high} low={low} />
      <path class="drawing-extension" d={`M${at(high)} ${cut}h${-inward * 17}`} />
      <DimensionLine from={{ x: dimension, y: cut }} to={{ x: dimension, y: FOOT - 1.5 }} />
      <Text
        x={dimension - inward * 6}
        y={(cut + FOOT) / 2}
        anchor={inward === 1 ? 'end' : 'start'}
        kind="drawing-strong"
      >
        {amount}
      </Text>
      <Text x={from(10)} y={names} anchor={inward === 1 ? 'start' : 'end'} kind="drawing-high-word">
        {highName}
      </Text>
      <Text x={from(DRAWING_WIDTH - 10)} y={lowNameAt} anchor={inward === 1 ? 'end' : 'start'}>
        {lowName}
      </Text>
    </Drawing>
  );
}

/** Upright strokes, closer together towards the high end. */
function WedgeHatch({ high, low }: { readonly high: number; readonly low: number }) {
  const strokes = Array.from({ length: 16 }, (_, index) => {
    const share = ((index + 0.6) / 16) ** 1.5;
    const x = high + (low - high) * share;
    return `M${at(x)} ${at(FOOT - WEDGE * (1 - share))}V${FOOT}`;
  });
  return <path class="drawing-wedge-hatch" d={strokes.join('')} />;
}
