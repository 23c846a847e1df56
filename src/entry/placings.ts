import { type Block, depthBehind } from '../core/part/block';
import { type Face, oppositeFace } from '../core/part/faces';
import { millimetresForDrawing } from './for-drawing';
import type { NewId } from './new-id';
import type { ColumnSetup, NoseComparatorSetup } from './setup-entry';
import { blank, isBlank } from './typed-length';

/** What the block stands on at each placing of a setting. */
export function baseOf(setup: NoseComparatorSetup, placing: { readonly base?: Face }): Face {
  return placing.base ?? setup.base;
}

/** True where the setting is turned on all four sides of a section. */
export function isFourSided(setup: NoseComparatorSetup): boolean {
  return setup.placings.some((placing) => baseOf(setup, placing) !== setup.base);
}

/** The setting with what was typed for the placing `id`. */
export function withReading(
  setup: NoseComparatorSetup,
  id: string,
  text: string,
): NoseComparatorSetup {
  const placings = setup.placings.map((placing) =>
    placing.id === id ? { ...placing, reading: { ...placing.reading, text } } : placing,
  );
  return { ...setup, placings };
}

/** The setting with all that it showed taken away, to be read anew. */
export function withoutReadings(setup: NoseComparatorSetup): NoseComparatorSetup {
  const placings = setup.placings.map((placing) => ({
    ...placing,
    reading: blank(placing.reading.unit),
  }));
  return { ...setup, placings };
}

/** The setting with the block to be seated once more, everything as at the placing `id`. */
export function seatAgain(
  setup: NoseComparatorSetup,
  id: string,
  newId: NewId,
): NoseComparatorSetup {
  const placings = setup.placings.flatMap((placing) =>
    placing.id === id
      ? [placing, { ...placing, id: newId(), reading: blank(placing.reading.unit) }]
      : [placing],
  );
  return { ...setup, placings };
}

/** The setting to be turned on all four sides: the corners of the section that it lacks, added. */
export function onAllFourSides(setup: NoseComparatorSetup, newId: NewId): NoseComparatorSetup {
  const { base, faces, placings } = setup;
  const unit = placings[0]?.reading.unit ?? 'µm';
  const round = [base, faces[0], oppositeFace(base), faces[1]];
  const corners = round.map((stand, index) => ({ stand, face: round[(index + 1) % 4] as Face }));
  const missing = corners.filter(({ stand, face }) => !hasCorner(setup, stand, face));
  const added = missing.map(({ stand, face }) => ({
    id: newId(),
    face,
    base: stand,
    reading: blank(unit),
  }));
  return { ...setup, placings: [...placings, ...added] };
}

/** True where the block is tall enough for the setting on whatever side it lies; so too while its height is not typed. */
export function fitsLyingDown(setup: NoseComparatorSetup, block: Block): boolean {
  const height = millimetresForDrawing(setup.indicatorHeight) ?? 0;
  return [setup.base, setup.faces[0]].every((face) => height <= depthBehind(block, face));
}

/** True where nothing has been read yet on any side but the first base. */
export function extraSidesAreEmpty(setup: NoseComparatorSetup): boolean {
  return setup.placings.every(
    (placing) => baseOf(setup, placing) === setup.base || isBlank(placing.reading),
  );
}

/** The setting swung round to two sides only. */
export function onTwoSides(setup: NoseComparatorSetup): NoseComparatorSetup {
  const placings = setup.placings.filter((placing) => baseOf(setup, placing) === setup.base);
  return { ...setup, placings };
}

/** An angle of the section is the same read from either of its faces. */
function hasCorner(setup: NoseComparatorSetup, one: Face, other: Face): boolean {
  return setup.placings.some((placing) => {
    const corner = [baseOf(setup, placing), placing.face];
    return corner.includes(one) && corner.includes(other);
  });
}

/** The column with what was typed for the placing `id` at one of its heights. */
export function withTraverseReading(
  setup: ColumnSetup,
  { placing: id, height }: { readonly placing: string; readonly height: string },
  text: string,
): ColumnSetup {
  const placings = setup.placings.map((placing) => {
    const reading = placing.readings[height];
    if (placing.id !== id || reading === undefined) return placing;
    return { ...placing, readings: { ...placing.readings, [height]: { ...reading, text } } };
  });
  return { ...setup, placings };
}

/** The column run once more up the face of the placing `id`, after lifting the block. */
export function traverseAgain(setup: ColumnSetup, id: string, newId: NewId): ColumnSetup {
  const placings = setup.placings.flatMap((placing) => {
    if (placing.id !== id) return [placing];
    const readings = Object.fromEntries(
      Object.entries(placing.readings).map(([height, { unit }]) => [height, blank(unit)]),
    );
    return [placing, { ...placing, id: newId(), readings }];
  });
  return { ...setup, placings };
}

/** The setup without one of its placings. */
export function withoutPlacing<S extends NoseComparatorSetup | ColumnSetup>(
  setup: S,
  id: string,
): S {
  return { ...setup, placings: setup.placings.filter((placing) => placing.id !== id) };
}

/** True where an earlier placing has the same face on the same base: this one repeats it. */
export function isRepeat(
  placings: readonly { readonly id: string; readonly face: Face; readonly base?: Face }[],
  id: string,
): boolean {
  const index = placings.findIndex((placing) => placing.id === id);
  const { face, base } = placings[index] ?? {};
  return placings.slice(0, index).some((one) => one.face === face && one.base === base);
}
