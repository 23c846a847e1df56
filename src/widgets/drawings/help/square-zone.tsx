import { DimensionLine } from '../dimension';
import { Drawing } from '../drawing';
import { DRAWING_WIDTH } from '../geometry';
import { PLATE_DEPTH, Plate } from '../plate';
import { Text } from '../text';

const [TOP, FOOT, LEFT, RIGHT, OUT] = [34, 168, 90, 206, 30];

/** A leaning face between two planes that are square to what the block stands on: their distance is the error. */
export function SquareZone() {
  return (
    <Drawing
      height={FOOT + PLATE_DEPTH + 4}
      label="A leaning face between two planes square to the plate. Their distance is how far it is out of square."
    >
      <Plate from={4} to={DRAWING_WIDTH - 4} y={FOOT} />
      <path class="drawing-metal" d={`M${LEFT} ${FOOT}H${RIGHT}L${RIGHT + OUT} ${TOP}H${LEFT}Z`} />
      <path class="drawing-extension" d={`M${RIGHT} 10V${FOOT}M${RIGHT + OUT} 10V${FOOT}`} />
      <DimensionLine from={{ x: RIGHT, y: 18 }} to={{ x: RIGHT + OUT, y: 18 }} />
      <Text x={RIGHT + OUT + 8} y={18} anchor="start" kind="drawing-strong">
        out of square
      </Text>
    </Drawing>
  );
}
