import { depthBehind } from '../core/part/block';
import type { Part } from '../core/part/part';
import type { NoseComparatorReading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { heightLimits, READING, STEEPEST, TOO_STEEP } from './limits';
import type { ProblemList } from './problems';
import { readLength } from './read-length';
import type { NoseComparatorSetup } from './setup-entry';
import { isBlank } from './typed-length';

/** Reads one setting of the nose comparator. */
export function readNoseComparator(
  setup: NoseComparatorSetup,
  part: Part,
  problems: ProblemList,
): readonly NoseComparatorReading[] {
  const heights = readHeights(setup, part, problems);
  const begun = setup.placings.some(({ reading }) => !isBlank(reading));
  const readings = setup.placings.flatMap(({ id, face, reading }) => {
    const asked = begun
      ? `Swing round and read the ${face} side too, the setting untouched`
      : undefined;
    const value = readLength(reading, fieldKey.placing(id), problems, READING, asked);
    if (value === undefined || heights === undefined) return [];
    const base = setup.base;
    return [{ kind: setup.kind, id, setting: setup.id, face, base, ...heights, value }];
  });
  refuseSteep(readings, problems);
  return readings;
}

function readHeights(setup: NoseComparatorSetup, part: Part, problems: ProblemList) {
  const limits = heightLimits(depthBehind(part.block, setup.base));
  const noseKey = fieldKey.noseHeight(setup.id);
  const indicatorKey = fieldKey.indicatorHeight(setup.id);
  const nose = readLength(setup.noseHeight, noseKey, problems, limits, 'Height of the nose');
  const indicator = readLength(
    setup.indicatorHeight,
    indicatorKey,
    problems,
    limits,
    'Height of the indicator',
  );
  if (nose === undefined || indicator === undefined) return undefined;
  if (indicator <= nose) {
    problems.wrong(indicatorKey, 'The indicator must stand above the nose');
    return undefined;
  }
  return { noseHeight: nose / 1000, indicatorHeight: indicator / 1000 };
}

function refuseSteep(readings: readonly NoseComparatorReading[], problems: ProblemList): void {
  const [first, ...others] = readings;
  for (const { id, value, indicatorHeight, noseHeight } of others) {
    const difference = Math.abs(value - (first as NoseComparatorReading).value);
    if (difference > 2 * STEEPEST * (indicatorHeight - noseHeight)) {
      problems.wrong(fieldKey.placing(id), TOO_STEEP);
    }
  }
}
