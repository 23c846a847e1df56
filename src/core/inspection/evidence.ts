import { kindOf, type Requirement } from '../part/requirement';
import type { Reading } from '../readings/reading';

/** True for what an instrument showed, false for what somebody says. */
export function isMeasured({ kind }: Reading): boolean {
  return kind !== 'assumed parallel';
}

/** The readings that count for `requirement`: an assumption of parallel faces cannot be the proof that they are parallel. */
export function evidenceFor(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  readings: readonly Reading[],
): readonly Reading[] {
  return kindOf(requirement) === 'parallelism' ? readings.filter(isMeasured) : readings;
}
