import { DimensionLine } from '../dimension';
import { Drawing } from '../drawing';
import { DRAWING_WIDTH } from '../geometry';
import { PLATE_DEPTH, Plate } from '../plate';
import { Text } from '../text';

const [TOP, FOOT, LEFT, RIGHT, OUT] = [8, 140, 96, 210, 26];

/** A block that is thicker at the top: two thicknesses show how much. */
export function ThicknessAtTwoHeights() {
  const rightAt = (y: number) => RIGHT + (OUT * (FOOT - y)) / (FOOT - TOP);
  return (
    <Drawing
      height={FOOT + PLATE_DEPTH + 4}
      label="A block that is thicker at the top than at the foot, measured across at two heights."
    >
      <Plate from={4} to={DRAWING_WIDTH - 4} y={FOOT} />
      <path class="drawing-metal" d={`M${LEFT} ${FOOT}H${RIGHT}L${RIGHT + OUT} ${TOP}H${LEFT}Z`} />
      {[TOP + 24, FOOT - 24].map((y, index) => (
        <g key={y}>
          <DimensionLine from={{ x: LEFT, y }} to={{ x: rightAt(y), y }} />
          <Text x={(LEFT + RIGHT) / 2} y={y - 12} kind="drawing-on-metal">
            {index === 0 ? '60.003' : '60.001'}
          </Text>
        </g>
      ))}
    </Drawing>
  );
}
