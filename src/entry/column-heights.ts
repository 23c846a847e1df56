import type { NewId } from './new-id';
import type { ColumnSetup } from './setup-entry';
import { blank, type TypedLength } from './typed-length';

/** The column with what was typed for one of its heights. */
export function withHeight(setup: ColumnSetup, id: string, typed: TypedLength): ColumnSetup {
  const heights = setup.heights.map((one) => (one.id === id ? { ...one, height: typed } : one));
  return { ...setup, heights };
}

/** The column with one height more, still empty, in the units of the others. */
export function addHeight(setup: ColumnSetup, newId: NewId): ColumnSetup {
  const id = newId();
  const height = blank(setup.heights.at(-1)?.height.unit ?? 'mm');
  return {
    ...setup,
    heights: [...setup.heights, { id, height }],
    placings: setup.placings.map((placing) => {
      const unit = Object.values(placing.readings)[0]?.unit ?? 'µm';
      return { ...placing, readings: { ...placing.readings, [id]: blank(unit) } };
    }),
  };
}

/** The column without its last height and what was read there. */
export function removeHeight(setup: ColumnSetup): ColumnSetup {
  const last = setup.heights.at(-1)?.id;
  return {
    ...setup,
    heights: setup.heights.slice(0, -1),
    placings: setup.placings.map((placing) => ({
      ...placing,
      readings: Object.fromEntries(
        Object.entries(placing.readings).filter(([height]) => height !== last),
      ),
    })),
  };
}
