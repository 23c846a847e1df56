import { depthBehind } from '../core/part/block';
import type { Part } from '../core/part/part';
import type { NoseComparatorReading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { baseOf } from './four-sides';
import { heightLimits, READING, STEEPEST, TOO_STEEP } from './limits';
import { isRepeat } from './placings';
import type { ProblemList } from './problems';
import { readLength } from './read-length';
import type { NoseComparatorSetup, NosePlacing } from './setup-entry';
import { isBlank } from './typed-length';

/** Reads one setting of the nose comparator. */
export function readNoseComparator(
  setup: NoseComparatorSetup,
  part: Part,
  problems: ProblemList,
): readonly NoseComparatorReading[] {
  const heights = readHeights(setup, part, problems);
  const begun = setup.placings.some(({ reading }) => !isBlank(reading));
  const readings = setup.placings.flatMap((placing) => {
    const { id, face, reading } = placing;
    const asked = begun ? missingInWords(setup, placing) : undefined;
    const value = readLength(reading, fieldKey.placing(id), problems, READING, asked);
    if (value === undefined || heights === undefined) return [];
    const base = baseOf(setup, placing);
    return [{ kind: setup.kind, id, setting: setup.id, face, base, ...heights, value }];
  });
  return withoutSteep(readings, problems);
}

function missingInWords(setup: NoseComparatorSetup, placing: NosePlacing): string {
  const { id, face, base } = placing;
  if (isRepeat(setup.placings, id))
    return `Lift the block, seat it again, and read the ${face} side`;
  if (base !== undefined) return `Stand it on its ${base} and read the ${face} side`;
  return `Swing round and read the ${face} side too, the setting untouched`;
}

function readHeights(setup: NoseComparatorSetup, part: Part, problems: ProblemList) {
  // Turned on its sides, the block must reach up to the indicator each time.
  const bases = setup.placings.map((placing) => baseOf(setup, placing));
  const tall = Math.min(...[setup.base, ...bases].map((base) => depthBehind(part.block, base)));
  const limits = heightLimits(tall);
  const noseKey = fieldKey.noseHeight(setup.id);
  const indicatorKey = fieldKey.indicatorHeight(setup.id);
  const nose = readLength(setup.noseHeight, noseKey, problems, limits, 'How high above the plate?');
  const indicator = readLength(
    setup.indicatorHeight,
    indicatorKey,
    problems,
    limits,
    'How high above the plate?',
  );
  if (nose === undefined || indicator === undefined) return undefined;
  if (indicator <= nose) {
    problems.wrong(indicatorKey, 'The indicator must stand above the nose');
    return undefined;
  }
  return { noseHeight: nose / 1000, indicatorHeight: indicator / 1000 };
}

/** The readings that can be of a part nearly square; the first is what the others are held against. */
function withoutSteep(
  readings: readonly NoseComparatorReading[],
  problems: ProblemList,
): readonly NoseComparatorReading[] {
  const [first] = readings;
  return readings.filter(({ id, value, indicatorHeight, noseHeight }) => {
    const difference = Math.abs(value - (first as NoseComparatorReading).value);
    const steep = difference > 2 * STEEPEST * (indicatorHeight - noseHeight);
    if (steep) problems.wrong(fieldKey.placing(id), TOO_STEEP);
    return !steep;
  });
}
