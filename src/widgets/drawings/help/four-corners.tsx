import { Drawing } from '../drawing';
import { at, DRAWING_WIDTH, outline, type Point } from '../geometry';
import { PLATE_DEPTH, Plate } from '../plate';
import { Text } from '../text';

/** A section that is out of square all round, its corners in order from the lower left. */
const SECTION: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 46, y: 0 },
  { x: 51, y: 52 },
  { x: -6, y: 47 },
];
const FOOT = 84;
const PITCH = 84;

/** One block, turned onto each of its four sides in turn: each time the corner at the lower right is read. */
export function FourCorners() {
  return (
    <Drawing
      height={FOOT + PLATE_DEPTH + 4}
      label="One block standing on each of its four sides in turn, so that each of its four corners is read."
    >
      <Plate from={4} to={DRAWING_WIDTH - 4} y={FOOT} />
      {SECTION.map((_, turns) => (
        <Standing key={turns} turns={turns} left={22 + turns * PITCH} />
      ))}
    </Drawing>
  );
}

/** The section standing on one of its sides, its corners numbered as they were before it was turned. */
function Standing({ turns, left }: { readonly turns: number; readonly left: number }) {
  const [first, second, third, fourth] = standingOn(turns).map(({ x, y }) => ({
    x: left + x,
    y: FOOT - y,
  })) as [Point, Point, Point, Point];
  const number = (corner: number) => String(((corner + turns) % 4) + 1);
  return (
    <g>
      <path class="drawing-metal" d={outline([first, second, third, fourth])} />
      <Text x={first.x + 9} y={first.y - 11} kind="drawing-soft">
        {number(0)}
      </Text>
      <Text x={second.x - 10} y={second.y - 12} kind="drawing-strong">
        {number(1)}
      </Text>
      <Text x={third.x - 11} y={third.y + 13} kind="drawing-soft">
        {number(2)}
      </Text>
      <Text x={fourth.x + 12} y={fourth.y + 13} kind="drawing-soft">
        {number(3)}
      </Text>
      <circle class="drawing-ring" cx={at(second.x)} cy={at(second.y)} r="7" />
    </g>
  );
}

/** The corners from the lower left on, the section turned so that its side `turns` lies on the plate, which is y = 0. */
function standingOn(turns: number): readonly Point[] {
  const points = [...SECTION.slice(turns), ...SECTION.slice(0, turns)];
  const [from, to] = points as [Point, Point];
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [cosine, sine] = [(to.x - from.x) / length, (to.y - from.y) / length];
  return points.map(({ x, y }) => {
    const [dx, dy] = [x - from.x, y - from.y];
    return { x: dx * cosine + dy * sine, y: dy * cosine - dx * sine };
  });
}
