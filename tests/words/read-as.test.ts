import { describe, expect, it } from 'vitest';
import { asTyped, readAs } from '../../src/words/read-as';
import { withSums } from '../entry/support/sums';
import { micro, mm, tenths } from '../entry/support/typed';

withSums();

describe('what a text is read as', () => {
  it('is said in the unit of the field', () => {
    expect(readAs(micro('0.2 thou'))).toBe('= 5.08 µm');
    expect(readAs(micro('20+1.5'))).toBe('= 21.5 µm');
    expect(readAs(tenths('-5.08 µm'))).toBe('= −2 tenths');
    expect(readAs(mm('1/3'))).toBe('= 0.33333 mm');
  });

  it('speaks of one tenth', () => {
    expect(readAs(tenths('0.0001 in'))).toBe('= 1 tenth');
    expect(readAs(tenths('-1 tenths'))).toBe('= −1 tenth');
    expect(readAs(tenths('0.00015 in'))).toBe('= 1.5 tenths');
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

describe('a length as it was typed', () => {
  it('has one unit, its own before that of the field', () => {
    expect(asTyped(mm(' 0.005 '))).toBe('0.005 mm');
    expect(asTyped(mm('5 µm'))).toBe('5 µm');
    expect(asTyped(micro('20+1.5'))).toBe('20+1.5 µm');
    expect(asTyped(tenths('1/8 in'))).toBe('1/8 in');
    expect(asTyped(tenths('1'))).toBe('1 tenth');
    expect(asTyped(tenths('1.5'))).toBe('1.5 tenths');
  });
});
