import { depthBehind } from '../core/part/block';
import type { Part } from '../core/part/part';
import { fromMillimetres, type LengthUnit } from '../core/units/length';
import type { NewId } from './new-id';
import { placeEdges } from './place-edges';
import type { OverFacePlace, OverFaceSetup } from './setup-entry';
import { blank, lengthText } from './typed-length';

/** Share of the face that a grid keeps away from its edges, where faces are often rounded. */
const MARGIN = 0.1;

/** The setup with an even grid of places over its face, row by row, what was read before taken off. */
export function withGrid(
  setup: OverFaceSetup,
  part: Part,
  [columns, rows]: readonly [number, number],
  units: { readonly size: 'mm' | 'in'; readonly reading: LengthUnit },
  newId: NewId,
): OverFaceSetup {
  const edges = placeEdges(setup.faces[0], part.datum);
  const ups = spread(rows, depthBehind(part.block, edges.up));
  const acrosses = spread(columns, depthBehind(part.block, edges.across));
  const typed = (millimetres: number) => ({
    text: lengthText(fromMillimetres(millimetres, units.size), units.size === 'in' ? 3 : 1),
    unit: units.size,
  });
  const places = ups.flatMap((up) =>
    acrosses.map(
      (across): OverFacePlace => ({
        id: newId(),
        up: typed(up),
        across: typed(across),
        reading: blank(units.reading),
      }),
    ),
  );
  return { ...setup, places };
}

function spread(count: number, length: number): readonly number[] {
  return Array.from(
    { length: count },
    (_, index) => length * (MARGIN + ((1 - 2 * MARGIN) * index) / (count - 1)),
  );
}
