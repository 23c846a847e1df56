import { Drawing } from '../drawing';
import { DRAWING_WIDTH, outline } from '../geometry';
import { PLATE_DEPTH, Plate } from '../plate';
import { Text } from '../text';

const [TOP, FOOT, WIDE, OUT] = [14, 130, 84, 24];

/** Two blocks that differ alike from side to side: of the one both sides lean, of the other only one. */
export function ParallelOrNot() {
  const block = (left: number, leftOut: number, rightOut: number) =>
    outline([
      { x: left, y: FOOT },
      { x: left + WIDE, y: FOOT },
      { x: left + WIDE + rightOut, y: TOP },
      { x: left + leftOut, y: TOP },
    ]);
  return (
    <Drawing
      height={FOOT + PLATE_DEPTH + 24}
      label="Left, both sides lean the same way by the same: they are parallel. Right, one side leans twice as far and the other stands square. Between the two sides both blocks differ by as much."
    >
      <Plate from={4} to={DRAWING_WIDTH - 4} y={FOOT} />
      <path class="drawing-metal" d={block(30, OUT / 2, OUT / 2)} />
      <path class="drawing-metal" d={block(204, 0, OUT)} />
      <Text x={78} y={FOOT + PLATE_DEPTH + 12}>
        parallel
      </Text>
      <Text x={252} y={FOOT + PLATE_DEPTH + 12}>
        not parallel
      </Text>
    </Drawing>
  );
}
