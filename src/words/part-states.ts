/** What the list calls where a part stands. */
export const STATE_LABELS = {
  'needs work': 'Needs work',
  'too close': 'Too close',
  in: 'In',
  'not read': 'No verdict',
} as const;

/** How many parts are in sight, out of how many: '30 of 5,000 parts', '1 part'. */
export function countInWords(shown: number, found: number): string {
  const all = String(found).replace(/\B(?=(\d{3})+$)/g, ',');
  const parts = found === 1 ? 'part' : 'parts';
  return shown < found ? `${shown} of ${all} ${parts}` : `${all} ${parts}`;
}

/** Says that no part is in sight: none that is `asked` for, or none on this shelf at all. */
export function noneInWords(asked: boolean): string {
  return asked ? 'No such part.' : 'No part lies here.';
}
