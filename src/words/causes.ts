import type { Cause } from '../core/readings/equation';

/** Each cause of doubt as a row of the budget names it. */
export const CAUSE_NAMES: Readonly<Record<Cause, string>> = {
  'indicator resolution': 'Indicator: smallest step',
  'indicator error': 'Indicator: its own error',
  'lever angle': 'Indicator: angle of the lever',
  seating: 'Seating of the block',
  plate: 'Plate under the block',
  'micrometer resolution': 'Micrometer: smallest step',
  'micrometer error': 'Micrometer: its own error',
  'height setting': 'Heights and places as set',
  warmth: 'Warmth across the part',
  assumption: 'Taken as parallel',
};
