import { at, type Point } from './geometry';

interface DimensionLineProps {
  readonly from: Point;
  readonly to: Point;
  /** Which ends carry an arrow. */
  readonly arrows?: 'both' | 'to';
}

/** A straight dimension line with its arrows. */
export function DimensionLine({ from, to, arrows = 'both' }: DimensionLineProps) {
  return (
    <g>
      <path class="drawing-dimension" d={`M${at(from.x)} ${at(from.y)}L${at(to.x)} ${at(to.y)}`} />
      <ArrowHead tip={to} tail={from} />
      {arrows === 'both' && <ArrowHead tip={from} tail={to} />}
    </g>
  );
}

const LENGTH = 9;
const HALF_WIDTH = 3.2;

/** An arrow head at `tip` that points away from `tail`; none where the line is too short for it. */
export function ArrowHead({ tip, tail }: { readonly tip: Point; readonly tail: Point }) {
  const [dx, dy] = [tip.x - tail.x, tip.y - tail.y];
  const length = Math.hypot(dx, dy);
  if (!(length >= 1)) return null;
  const [ux, uy] = [dx / length, dy / length];
  const size = Math.min(LENGTH, length / 2);
  const back = { x: tip.x - ux * size, y: tip.y - uy * size };
  const wing = (side: number) =>
    `L${at(back.x - side * uy * HALF_WIDTH)} ${at(back.y + side * ux * HALF_WIDTH)}`;
  return <path class="drawing-arrow" d={`M${at(tip.x)} ${at(tip.y)}${wing(1)}${wing(-1)}Z`} />;
}
