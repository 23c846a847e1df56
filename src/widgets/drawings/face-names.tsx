import { type BlockLayout, onFace } from './block-layout';
import { LINE, textWidth } from './geometry';
import { Text } from './text';

interface FaceNamesProps {
  readonly layout: BlockLayout;
  /** The y of lines that cross the block, which names keep clear of where they can. */
  readonly lines: readonly number[];
  /** The y of the ring round what is being read. */
  readonly ring: number | undefined;
  readonly names: Readonly<Record<'leftName' | 'rightName' | 'topName' | 'baseName', string>>;
}

/** Between a face and its name. */
const INSET = 7;

/** The names of the four faces, each on the metal behind its face; the top's is above it. */
export function FaceNames({ layout, lines, ring, names }: FaceNamesProps) {
  const { left, right, top, plate, leans } = layout;
  const rightY = nameY(layout, lines, [ring]);
  const both = textWidth(names.leftName) + textWidth(names.rightName) + 3 * INSET;
  const narrowest = right - left + Math.min(0, leans.left) + Math.min(0, leans.right);
  const leftY = both <= narrowest ? rightY : nameY(layout, lines, [ring, rightY]);
  const inset = (y: number) =>
    ring !== undefined && Math.abs(y - ring) <= LINE + 3 ? 2 * INSET : INSET;
  const edge = LINE / 2 + 3;
  return (
    <g>
      <Text
        x={onFace(layout, 'left', leftY).x + inset(leftY)}
        y={leftY}
        anchor="start"
        kind="drawing-on-metal"
      >
        {names.leftName}
      </Text>
      <Text
        x={onFace(layout, 'right', rightY).x - inset(rightY)}
        y={rightY}
        anchor="end"
        kind="drawing-on-metal"
      >
        {names.rightName}
      </Text>
      <Text x={(left + right) / 2} y={plate - edge} kind="drawing-on-metal">
        {names.baseName}
      </Text>
      <Text x={(left + right + leans.right - leans.left) / 2} y={top - edge}>
        {names.topName}
      </Text>
    </g>
  );
}

/** Where a name may stand, as a share of the height: the best place first. */
const PLACES = [0.56, 0.66, 0.46, 0.76, 0.36, 0.86, 0.3];

/** The first place that is clear of the base's name, of what is `taken` and, if any is, of the `lines`. */
function nameY(
  { top, plate }: BlockLayout,
  lines: readonly number[],
  taken: readonly (number | undefined)[],
): number {
  const lowest = plate - LINE - 12;
  const places = PLACES.map((share) => plate - share * (plate - top));
  const free = places.filter(
    (y) => y <= lowest && taken.every((one) => one === undefined || Math.abs(y - one) > LINE + 3),
  );
  const clear = free.find((y) => lines.every((line) => Math.abs(line - y) >= LINE / 2 + 2));
  return clear ?? free[0] ?? places[0] ?? top;
}
