import { depthBehind } from '../core/part/block';
import type { Part } from '../core/part/part';
import type { ColumnReading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { baseOf } from './four-sides';
import { heightLimits, READING, STEEPEST, TOO_STEEP } from './limits';
import type { ProblemList } from './problems';
import { readLength } from './read-length';
import type { ColumnPlacing, ColumnSetup } from './setup-entry';
import { blank, isBlank } from './typed-length';

/** Reads the traverses of one column. */
export function readColumn(
  setup: ColumnSetup,
  part: Part,
  problems: ProblemList,
): readonly ColumnReading[] {
  const heights = readHeights(setup, part, problems);
  const begun = setup.placings.some(({ readings }) =>
    Object.values(readings).some((reading) => !isBlank(reading)),
  );
  return setup.placings.flatMap((placing) => {
    const readings = setup.heights.flatMap(({ id: heightId }) => {
      const key = fieldKey.traverse(placing.id, heightId);
      const typed = placing.readings[heightId] ?? blank('µm');
      const asked = begun ? missingInWords(placing) : undefined;
      const value = readLength(typed, key, problems, READING, asked);
      const height = heights.get(heightId);
      if (value === undefined || height === undefined) return [];
      const { id: column, kind } = setup;
      const { id, face } = placing;
      const base = baseOf(setup, placing);
      return [
        { kind, id: `${id} ${heightId}`, column, placing: id, face, base, height, value, key },
      ];
    });
    return withoutSteep(readings, problems).map(({ key: _, ...reading }) => reading);
  });
}

function missingInWords({ face, base }: ColumnPlacing): string {
  return base === undefined
    ? `Read the ${face} side here too`
    : `Stand it on its ${base} and read the ${face} side here`;
}

/** Heights in mm by id. A height that is given twice would say the same thing twice. */
function readHeights(
  setup: ColumnSetup,
  part: Part,
  problems: ProblemList,
): ReadonlyMap<string, number> {
  // Turned on its sides, the block must reach up to the indicator each time.
  const bases = setup.placings.map((placing) => baseOf(setup, placing));
  const tall = Math.min(...[setup.base, ...bases].map((base) => depthBehind(part.block, base)));
  const limits = heightLimits(tall);
  const heights = new Map<string, number>();
  for (const { id, height } of setup.heights) {
    const key = fieldKey.height(id);
    const read = readLength(height, key, problems, limits, 'How high?');
    if (read === undefined) continue;
    if ([...heights.values()].includes(read / 1000)) {
      problems.wrong(key, 'This height is there already: two different heights show a lean');
    } else {
      heights.set(id, read / 1000);
    }
  }
  return heights;
}

type KeyedReading = ColumnReading & { readonly key: string };

/** The readings that can be of a part nearly square; the first is what the others are held against. */
function withoutSteep(
  readings: readonly KeyedReading[],
  problems: ProblemList,
): readonly KeyedReading[] {
  const [first] = readings;
  return readings.filter((reading) => {
    const { value, height } = first as ColumnReading;
    const rise = Math.abs(reading.value - value);
    const steep = rise > 2 * STEEPEST * Math.abs(reading.height - height);
    if (steep) problems.wrong(reading.key, TOO_STEEP);
    return !steep;
  });
}
