import type { Face } from '../part/faces';

/** Name of what a setting of the nose comparator would show on a perfectly square block, µm. */
export function zeroOfSetting(setting: string): string {
  return `zero of setting ${setting}`;
}

/** Name of what an indicator would show at one placing at height 0, µm. */
export function zeroOfPlacing(placing: string): string {
  return `zero of placing ${placing}`;
}

/** Name of the lean of a column, µm/mm: positive where the indicator reads more going up. */
export function leanOf(column: string): string {
  return `lean of ${column}`;
}

/** Name of how the block sits tilted at one placing, µm/mm: positive where it leans towards the face. */
export function sitOf(placing: string, towards: Face): string {
  return `sit of ${placing} towards ${towards}`;
}

const SIT = 'sit of ';

/** Id that the statement 'the block sits square at this placing' goes by among the readings. */
export function sitReading(placing: string): string {
  return `${SIT}${placing}`;
}

/** True for the id of such a statement. */
export function isSit(reading: string): boolean {
  return reading.startsWith(SIT);
}
