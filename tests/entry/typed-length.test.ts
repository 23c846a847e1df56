import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LENGTH_UNITS, type LengthUnit } from '../../src/core/units/length';
import { provideArithmetic } from '../../src/entry/arithmetic';
import {
  blank,
  inUnit,
  isBlank,
  readTyped,
  smallUnit,
  type TypedLength,
} from '../../src/entry/typed-length';
import { withSums } from './support/sums';
import { inch, micro, mm, tenths } from './support/typed';

const UNITS = LENGTH_UNITS;

/** Decimal text of `count` steps of 10^-`decimals`, as short as can be; by digits, not by division. */
function decimalText(count: number, decimals: number): string {
  const digits = String(Math.abs(count)).padStart(decimals + 1, '0');
  const text = `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`.replace(/\.?0+$/, '');
  return count < 0 ? `-${text}` : text;
}

describe('a length put into another unit', () => {
  it.each([
    [mm('25.4'), 'in', '1'],
    [mm('60'), 'in', '2.362205'],
    [mm('0.001'), 'in', '0.0000394'],
    [inch('0.4375'), 'mm', '11.1125'],
    [micro('3'), 'tenths', '1.18'],
    [micro('0.0254'), 'tenths', '0.01'],
    [micro('0.03'), 'tenths', '0.0118'],
    [mm('0.005'), 'µm', '5'],
    [mm('0.00254'), 'tenths', '1'],
    [inch('1'), 'mm', '25.4'],
    [inch('-0.001'), 'thou', '-1'],
    [micro('2.54'), 'tenths', '1'],
    [micro('25.4'), 'thou', '1'],
    [micro('-12,7'), 'tenths', '-5'],
    [tenths('10'), 'µm', '25.4'],
    [tenths('10'), 'thou', '1'],
    [micro('100'), 'mm', '0.1'],
    [mm('100'), 'µm', '100000'],
    [mm('0'), 'in', '0'],
    [micro('-0.00001'), 'mm', '0'],
    [micro('0.0254'), 'in', '0.000001'],
  ] as const)('%o in %s is %s', (typed, unit, text) => {
    expect(inUnit(typed, unit)).toMatchObject({ text, unit });
  });

  it.each([mm('30.000'), mm('2,50'), mm('007'), inch('1.250'), micro('+4.0'), tenths('-0.50')])(
    '%o comes back as it was typed, by whatever units',
    (typed) => {
      const others = UNITS.filter((unit) => unit !== typed.unit);
      for (const unit of others) {
        expect(inUnit(inUnit(typed, unit), typed.unit)).toEqual(typed);
        for (const further of others) {
          expect(inUnit(inUnit(inUnit(typed, unit), further), typed.unit)).toEqual(typed);
        }
      }
    },
  );

  it('is what was typed last, where that was in the other unit', () => {
    const converted = inUnit(mm('30.000'), 'µm');
    expect(converted).toEqual({ text: '30000', unit: 'µm', from: mm('30.000') });
    expect(inUnit({ ...converted, text: '30001' }, 'mm')).toEqual(mm('30.001'));
  });

  it('is as long as what was typed, though it is shown shorter', () => {
    const converted = inUnit(mm('50'), 'in');
    expect(converted).toEqual({ text: '1.968504', unit: 'in', from: mm('50') });
    expect(readTyped(converted)).toEqual(readTyped(mm('50')));
    expect(readTyped(inch('1.968504'))).not.toEqual(readTyped(mm('50')));
  });

  it('keeps what was typed where it is a little other than what is shown', () => {
    const typed = inch('1.968504');
    expect(inUnit(typed, 'mm')).toEqual({ text: '50', unit: 'mm', from: typed });
  });

  it('is left as typed where it is in that unit already', () => {
    expect(inUnit(mm(' 01,50 '), 'mm')).toEqual(mm(' 01,50 '));
  });

  it.each(['', ' ', '-', 'abc', '1.2.3', '1234567890123456'])(
    'keeps %j, which is no number, to be put right',
    (text) => {
      expect(inUnit(mm(text), 'in')).toEqual(inch(text));
    },
  );
});

describe('a sum, or a length with a unit of its own, put into another unit', () => {
  withSums();

  it.each([
    [micro('20+5.4'), 'thou', '1'],
    [tenths('1/2'), 'µm', '1.27'],
  ] as const)(
    '%o in %s is worked out: %s, and a sum again when it is back',
    (typed, unit, text) => {
      const converted = inUnit(typed, unit);
      expect(converted).toEqual({ text, unit, from: typed });
      expect(inUnit(converted, typed.unit)).toEqual(typed);
    },
  );

  it.each(['0.2 thou', '-2 tenths', '1 µm + 1 µm'])('%j says the same in any unit', (text) => {
    expect(inUnit(micro(text), 'tenths')).toEqual(tenths(text));
  });

  it('stays in its unit while it cannot be worked out', () => {
    provideArithmetic(() => 'waiting');
    expect(inUnit(micro('20+5.4'), 'thou')).toEqual(micro('20+5.4'));
    provideArithmetic(() => 'missing');
    expect(inUnit(micro('20+5.4'), 'thou')).toEqual(micro('20+5.4'));
  });
});

/** The decimals that a length may be typed with: to a tenth of a nanometre or a millionth of an inch. */
const TYPED = { µm: 4, mm: 7, tenths: 2, thou: 3, in: 6 } as const satisfies Record<
  LengthUnit,
  number
>;

/** µm */
function lengthOf(typed: TypedLength): number {
  const read = readTyped(typed);
  return read.kind === 'length' ? read.length : Number.NaN;
}

describe.each(UNITS)('a length typed in %s', (unit) => {
  it.each(UNITS)('is the same again after it was in %s', (between) => {
    // Up to 3 m or 120 inches.
    const most = unit === 'mm' || unit === 'µm' ? 3e10 : 1.2e8;
    const steps = fc.integer({ min: -most, max: most });
    fc.assert(
      fc.property(fc.oneof(steps, fc.integer({ min: -999, max: 999 })), (count) => {
        const typed = { text: decimalText(count, TYPED[unit]), unit };
        expect(inUnit(inUnit(typed, between), unit)).toEqual(typed);
        expect(lengthOf(inUnit(typed, between))).toBeCloseTo(lengthOf(typed), 7);
      }),
    );
  });
});

describe('an empty field', () => {
  it('has a unit and no text', () => {
    expect(blank('thou')).toEqual({ text: '', unit: 'thou' });
    expect(isBlank(blank('mm'))).toBe(true);
  });

  it('may hold spaces, but nothing else', () => {
    expect(isBlank(mm('  '))).toBe(true);
    expect(isBlank(mm('-'))).toBe(false);
    expect(isBlank(mm('0'))).toBe(false);
  });
});

it('small lengths go with sizes: µm with mm, tenths with inches', () => {
  expect([smallUnit('mm'), smallUnit('in')]).toEqual(['µm', 'tenths']);
});
