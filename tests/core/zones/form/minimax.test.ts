import { describe, expect, it } from 'vitest';
import { columnsOf } from '../../../../src/core/zones/form/columns';
import { minimaxFit } from '../../../../src/core/zones/form/minimax/minimax-fit';
import { expectClose } from '../../support/close';
import { MINIMAX_EXPONENTIALS } from './reference/minimax-exponentials';

describe('the minimax fit of two exponentials and a constant', () => {
  const { t, y, printed, recomputed } = MINIMAX_EXPONENTIALS;
  const columns = [Math.exp, (at: number) => Math.exp(-at), () => 1].map((term) =>
    Float64Array.from(t, term),
  );
  const fit = minimaxFit(columnsOf(columns), Float64Array.from(y));

  it('has every printed digit', () => {
    const { a, b, c } = fit.factors;
    expect(a.toFixed(4)).toBe(printed.a);
    expect(b.toFixed(4)).toBe(printed.b);
    expect(c.toFixed(4)).toBe(printed.c);
    expect(fit.deviation.toFixed(5)).toBe(printed.greatestError);
  });

  it('has the digits that another solver gives', () => {
    const { a, b, c } = fit.factors;
    [a, b, c].forEach((factor, place) => {
      expectClose(factor, recomputed.coefficients[place]!, { relative: 1e-11 });
    });
    expectClose(fit.deviation, recomputed.greatestError, { relative: 1e-11 });
  });

  it('is held by four observations in turn, whose multipliers prove it', () => {
    const held = [...fit.contacts].sort((a, b) => a.index - b.index);
    const signs = held.map(({ multiplier }) => Math.sign(multiplier));
    expect(signs).toEqual([signs[0], -signs[0]!, signs[0], -signs[0]!]);
    const total = (of: (index: number) => number) =>
      held.reduce((sum, { index, multiplier }) => sum + multiplier * of(index), 0);
    for (const column of columns)
      expectClose(
        total((index) => column[index]!),
        0,
      );
    expectClose(
      total((index) => y[index]!),
      fit.deviation,
    );
    expectClose(Math.max(...fit.residuals.map(Math.abs)), fit.deviation);
  });
});

describe('a minimax fit with fewer unknowns', () => {
  it('of one constant is the middle of the range', () => {
    const fit = minimaxFit(columnsOf([Float64Array.of(1, 1, 1)]), Float64Array.of(3, 8, 4));
    expect(fit.factors).toEqual({ a: 5.5, b: 0, c: 0 });
    expect(fit.deviation).toBe(2.5);
  });

  it('of a factor through 0, where no column is constant', () => {
    // |2 - f| and |2 - 3·f| are equal at f = 1, and the third error is less.
    const fit = minimaxFit(columnsOf([Float64Array.of(1, 3, 2)]), Float64Array.of(2, 2, 2));
    expectClose(fit.factors.a, 1);
    expectClose(fit.deviation, 1);
  });
});

describe('a minimax fit that makes no sense is refused', () => {
  const ones = Float64Array.of(1, 1, 1, 1, 1);

  it('columns that are not independent', () => {
    const doubled = Float64Array.of(2, 2, 2, 2, 2);
    expect(() => minimaxFit(columnsOf([ones, doubled]), ones)).toThrow('not independent');
  });

  it('no unknown, or more than three', () => {
    expect(() => columnsOf([])).toThrow(RangeError);
    expect(() => columnsOf([ones, ones, ones, ones])).toThrow(RangeError);
  });

  it('no observation left over', () => {
    expect(() => minimaxFit(columnsOf([Float64Array.of(1)]), Float64Array.of(1))).toThrow(
      RangeError,
    );
  });
});
