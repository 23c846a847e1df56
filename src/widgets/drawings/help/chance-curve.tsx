import { Drawing } from '../drawing';
import { at, DRAWING_WIDTH } from '../geometry';
import { Text } from '../text';

const FOOT = 96;
const HEIGHT = 78;
const MIDDLE = 150;
/** One standard uncertainty. */
const SIGMA = 38;
const LIMIT = MIDDLE + 1.2 * SIGMA;

/** How likely each true value is, and the share of it that lies within what the drawing allows. */
export function ChanceCurve() {
  const y = (x: number) => FOOT - HEIGHT * Math.exp(-(((x - MIDDLE) / SIGMA) ** 2) / 2);
  const curve = (from: number, to: number) =>
    Array.from({ length: 41 }, (_, step) => {
      const x = from + ((to - from) * step) / 40;
      return `${at(x)} ${at(y(x))}`;
    }).join('L');
  const [least, most] = [MIDDLE - 3 * SIGMA, MIDDLE + 3 * SIGMA];
  return (
    <Drawing
      height={FOOT + 28}
      label="A bell over the values that may be true. The share of it on the near side of the limit is the chance of being in."
    >
      <path
        class="drawing-bar-in"
        d={`M${at(least)} ${FOOT}L${curve(least, LIMIT)}L${at(LIMIT)} ${FOOT}Z`}
      />
      <path
        class="drawing-bar-out"
        d={`M${at(LIMIT)} ${FOOT}L${curve(LIMIT, most)}L${at(most)} ${FOOT}Z`}
      />
      <path class="drawing-limit" d={`M${at(LIMIT)} 10V${FOOT + 6}`} />
      <path class="drawing-zero" d={`M8 ${FOOT}H${DRAWING_WIDTH - 8}`} />
      <Text x={LIMIT + 8} y={14} anchor="start">
        limit
      </Text>
      <Text x={MIDDLE} y={FOOT + 14}>
        found
      </Text>
    </Drawing>
  );
}
