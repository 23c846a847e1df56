import { at } from './geometry';

interface PlateProps {
  readonly from: number;
  readonly to: number;
  /** The working surface. */
  readonly y: number;
}

/** Depth of the hatching under the surface. */
export const PLATE_DEPTH = 13;
const PITCH = 9;

/** A surface plate, hatched as ground that does not give. */
export function Plate({ from, to, y }: PlateProps) {
  const count = Math.max(0, Math.floor((to - from - PLATE_DEPTH) / PITCH) + 1);
  const strokes = Array.from(
    { length: count },
    (_, index) => `M${at(from + PLATE_DEPTH - 2 + index * PITCH)} ${at(y + 2)}l-10 10`,
  );
  return (
    <g>
      <path class="drawing-hatch" d={strokes.join('')} />
      <path class="drawing-surface" d={`M${at(from)} ${at(y)}H${at(to)}`} />
    </g>
  );
}
