import { depthBehind } from '../core/part/block';
import type { Part } from '../core/part/part';
import { withPlace } from './places';
import { withReading, withTraverseReading } from './placings';
import type { SetupEntry } from './setup-entry';
import { isBlank, lengthIn, type TypedLength } from './typed-length';

/** The reading that comes next, and everything as if it were typed. */
export interface NextEmpty {
  /** The id of the reading. */
  readonly id: string;
  readonly filled: readonly SetupEntry[];
}

/**
 * The first reading that is still empty, filled with a value that it may well have: that of its like,
 * or of a part true to the drawing. What the readings fix does not hang on the value.
 */
export function nextEmpty(setups: readonly SetupEntry[], part: Part): NextEmpty | undefined {
  for (const [index, setup] of setups.entries()) {
    const next = nextIn(setup, part);
    if (next !== undefined) return { id: next.id, filled: setups.with(index, next.filled) };
  }
  return undefined;
}

function nextIn(setup: SetupEntry, part: Part): { id: string; filled: SetupEntry } | undefined {
  switch (setup.kind) {
    case 'nose comparator': {
      const { placings } = setup;
      const empty = placings.find(({ reading }) => isBlank(reading));
      if (empty === undefined) return undefined;
      const text = likely(placings.map(({ reading }) => reading));
      return { id: empty.id, filled: withReading(setup, empty.id, text) };
    }
    case 'column':
      for (const { id: placing, readings } of setup.placings) {
        const height = setup.heights.find(({ id }) =>
          isBlank(readings[id] ?? { text: '', unit: 'µm' }),
        );
        if (height === undefined) continue;
        const text = likely(Object.values(readings));
        const at = { placing, height: height.id };
        return { id: `${placing} ${height.id}`, filled: withTraverseReading(setup, at, text) };
      }
      return undefined;
    case 'micrometer': {
      const empty = setup.places.find(({ thickness }) => isBlank(thickness));
      if (empty === undefined) return undefined;
      const { unit } = empty.thickness;
      const nominal = lengthIn(depthBehind(part.block, setup.faces[0]) * 1000, unit);
      const text = likely(
        setup.places.map(({ thickness }) => thickness),
        nominal,
      );
      return { id: empty.id, filled: withPlace(setup, empty.id, { thickness: { text, unit } }) };
    }
    case 'over the top':
    case 'face map': {
      const empty = setup.places.find(({ reading }) => isBlank(reading));
      if (empty === undefined) return undefined;
      const reading = {
        ...empty.reading,
        text: likely(setup.places.map((place) => place.reading)),
      };
      return { id: empty.id, filled: withPlace(setup, empty.id, { reading }) };
    }
    case 'assumed parallel':
      return undefined;
  }
}

function likely(readings: readonly TypedLength[], otherwise = '0'): string {
  return readings.find((reading) => !isBlank(reading))?.text ?? otherwise;
}
