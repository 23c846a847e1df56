import type { Adjustment, Estimate } from '../adjustment/adjustment';
import { unknown } from '../part/linear-form';
import type { Reading } from '../readings/reading';
import { leanOf, zeroOfSetting } from '../readings/unknowns';

/** What the readings say of the comparator itself. */
export type ComparatorAnswer =
  | {
      readonly kind: 'zero';
      /** Which setting of the nose comparator. */
      readonly setting: string;
      /** What it would show on a perfectly square block, µm; undefined where not fixed. */
      readonly estimate: Estimate | undefined;
    }
  | {
      readonly kind: 'lean';
      readonly column: string;
      /** µm/mm, positive where the indicator reads more going up; undefined where not fixed. */
      readonly estimate: Estimate | undefined;
    };

/** The zero of every comparator setting and the lean of every column that was used. */
export function comparatorAnswers(
  readings: readonly Reading[],
  adjustment: Adjustment,
): readonly ComparatorAnswer[] {
  const settings = new Set(
    readings.flatMap((reading) => (reading.kind === 'nose comparator' ? [reading.setting] : [])),
  );
  const columns = new Set(
    readings.flatMap((reading) => (reading.kind === 'column' ? [reading.column] : [])),
  );
  return [
    ...[...settings].map((setting) => ({
      kind: 'zero' as const,
      setting,
      estimate: adjustment.estimate(unknown(zeroOfSetting(setting))),
    })),
    ...[...columns].map((column) => ({
      kind: 'lean' as const,
      column,
      estimate: adjustment.estimate(unknown(leanOf(column))),
    })),
  ];
}
