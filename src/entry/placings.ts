import type { Face } from '../core/part/faces';
import type { NewId } from './new-id';
import type { ColumnSetup, NoseComparatorSetup } from './setup-entry';
import { blank } from './typed-length';

/** The setting with what was typed for the placing `id`. */
export function withReading(
  setup: NoseComparatorSetup,
  id: string,
  text: string,
): NoseComparatorSetup {
  const placings = setup.placings.map((placing) =>
    placing.id === id ? { ...placing, reading: { text, unit: placing.reading.unit } } : placing,
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

/** The column with what was typed for the placing `id` at one of its heights. */
export function withTraverseReading(
  setup: ColumnSetup,
  { placing: id, height }: { readonly placing: string; readonly height: string },
  text: string,
): ColumnSetup {
  const placings = setup.placings.map((placing) => {
    const reading = placing.readings[height];
    if (placing.id !== id || reading === undefined) return placing;
    return {
      ...placing,
      readings: { ...placing.readings, [height]: { text, unit: reading.unit } },
    };
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
