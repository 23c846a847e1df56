import type { Face } from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import type { PartEntry, RequirementEntry } from '../../../src/entry/part-entry';
import { micro, mm } from './typed';

/** A block 60 × 40 × 90 mm on its bottom, with nothing asked of it. */
export const PART: Part = {
  block: { size: { x: 60, y: 40, z: 90 } },
  datum: 'bottom',
  requirements: [],
  finished: [],
};

/** The same as typed. */
export const ENTRY: PartEntry = {
  name: 'Try square block',
  job: '',
  material: '',
  size: { x: mm('60'), y: mm('40'), z: mm('90') },
  datum: 'bottom',
  requirements: [],
  finished: [],
};

/** A line of the drawing: `face` to `datum`, within 5 µm unless said otherwise. */
export function asked(face: Face, datum: Face, tolerance = micro('5')): RequirementEntry {
  return { id: `${face} to ${datum}`, face, datum, tolerance };
}
