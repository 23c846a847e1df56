import { expect, it } from 'vitest';
import { sizeInWords, sizesInWords } from '../../src/words/sizes';
import { withSums } from '../entry/support/sums';
import { inch, mm } from '../entry/support/typed';

withSums();

it('sizes stand as typed, with a question mark for one that is missing', () => {
  expect(sizesInWords({ x: mm('60.0'), y: mm(' 40'), z: mm('') })).toBe('60.0 × 40 × ? mm');
});

it('a sum, or a size with a unit of its own, is worked out: among factors it would be misread', () => {
  const size = { x: inch('2.5'), y: inch('38.1 mm'), z: inch('3+1/4') };
  expect(sizesInWords(size)).toBe('2.5 × 1.5 × 3.25 in');
  expect(sizeInWords(size.z)).toBe('3.25 in');
});
