/** Name of what the comparator would show on a perfectly square block, µm. */
export function zeroOf(settingOrPlacing: string): string {
  return `zero of ${settingOrPlacing}`;
}

/** Name of the lean of a column, µm/mm: positive where the indicator reads more going up. */
export function leanOf(column: string): string {
  return `lean of ${column}`;
}

/** Name of how the block sits tilted at one placing, µm/mm. */
export function sitOf(placing: string): string {
  return `sit of ${placing}`;
}
