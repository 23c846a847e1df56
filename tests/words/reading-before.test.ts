import { expect, it } from 'vitest';
import { beforeInWords } from '../../src/words/reading-before';
import { micro, mm, tenths } from '../entry/support/typed';

const LAST = { typed: micro('41'), when: 'last time' } as const;

it('the reading before is said, and how far this one is from it', () => {
  expect(beforeInWords(LAST, micro(''))).toBe('Last time 41 µm');
  expect(beforeInWords(LAST, micro('37.8'))).toBe('Last time 41 µm, changed by −3.2');
  expect(beforeInWords(LAST, micro('41.50'))).toBe('Last time 41 µm, changed by +0.5');
  expect(beforeInWords(LAST, micro('41'))).toBe('Last time 41 µm, now the same');
  expect(beforeInWords({ typed: micro('-2.54'), when: 'seating before' }, tenths('1'))).toBe(
    'Seating before −1 tenth, changed by +2',
  );
  expect(beforeInWords({ ...LAST, typed: mm('60.001') }, mm('59,998'))).toBe(
    'Last time 60.001 mm, changed by −0.003',
  );
});

it('while either is no number there is no difference', () => {
  expect(beforeInWords(LAST, micro('3x'))).toBe('Last time 41 µm');
  expect(beforeInWords({ ...LAST, typed: micro('x') }, micro('3'))).toBeUndefined();
  expect(beforeInWords(undefined, micro('3'))).toBeUndefined();
});
