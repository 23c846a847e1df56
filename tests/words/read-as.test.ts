import { describe, expect, it } from 'vitest';
import { readAs } from '../../src/words/read-as';
import { withSums } from '../entry/support/sums';
import { micro, mm, tenths } from '../entry/support/typed';

withSums();

describe('what a text is read as', () => {
  it('is said in the unit of the field', () => {
    expect(readAs(micro('0.2 thou'))).toBe('= 5.08 µm');
    expect(readAs(micro('20+1.5'))).toBe('= 21.5 µm');
    expect(readAs(tenths('-5.08 µm'))).toBe('= −2 tenths');
    expect(readAs(mm('1/3'))).toBe('= 0.3333333 mm');
  });

  it('is not said where it is said already, or is nothing yet', () => {
    expect([micro('5'), micro(''), micro('20+'), micro('x')].map(readAs)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});
