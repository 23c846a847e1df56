import { DimensionLine } from '../dimension';
import { Drawing } from '../drawing';
import { DRAWING_WIDTH } from '../geometry';
import { PLATE_DEPTH, Plate } from '../plate';
import { Text } from '../text';

const [TOP, FOOT, FACE, OUT] = [34, 150, 160, 36];

/** A face that leans out by so much over 100 mm of height, far too much drawn. */
export function LeanPerLength() {
  return (
    <Drawing
      height={FOOT + PLATE_DEPTH + 4}
      label="A face that stands 8 µm further out 100 mm higher up."
    >
      <Plate from={4} to={DRAWING_WIDTH - 4} y={FOOT} />
      <path
        class="drawing-metal"
        d={`M${FACE - 70} ${FOOT}H${FACE}L${FACE + OUT} ${TOP}H${FACE - 70}`}
      />
      <path class="drawing-extension" d={`M${FACE} ${TOP - 20}V${FOOT}M${FACE} ${TOP}H272`} />
      <DimensionLine from={{ x: 262, y: FOOT }} to={{ x: 262, y: TOP }} />
      <Text x={270} y={(TOP + FOOT) / 2} anchor="start">
        100 mm
      </Text>
      <DimensionLine from={{ x: FACE, y: TOP - 12 }} to={{ x: FACE + OUT, y: TOP - 12 }} />
      <Text x={FACE + OUT + 8} y={TOP - 12} anchor="start" kind="drawing-strong">
        8 µm
      </Text>
    </Drawing>
  );
}
