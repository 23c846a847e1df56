import { outwardNormal } from '../core/part/faces';
import type { PartEntry } from '../entry/part-entry';
import { namesWithSign } from '../entry/reading-names';
import type { SetupEntry } from '../entry/setup-entry';
import { sizeInWords } from './sizes';

/**
 * What each reading is called in a working. A thickness goes in as what it has above the size on the
 * drawing, so that is said: 'Micrometer right to left, place 1, above 60 mm'.
 */
export function workingNames(
  setups: readonly SetupEntry[],
  sizes: PartEntry['size'],
): ReadonlyMap<string, string> {
  const names = new Map(namesWithSign(setups));
  for (const setup of setups) {
    if (setup.kind !== 'micrometer') continue;
    const size = sizeInWords(sizes[outwardNormal(setup.faces[0]).axis]);
    for (const { id } of setup.places) {
      names.set(id, `${names.get(id)}, above ${size}`);
    }
  }
  return names;
}
