import { describe, expect, it } from 'vitest';
import {
  type LinearEstimate,
  solveLeastSquares,
} from '../../../../src/core/adjustment/least-squares';
import { ALASKA_PIPELINE } from '../../reference/alaska-pipeline';
import { THERMOMETER } from '../../reference/gum-thermometer';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { columnsOf, pick, residualStandardDeviation } from '../../support/polynomial';

describe('the thermometer of GUM H.3: every result as it is printed', () => {
  const { t, b, t0, printed } = THERMOMETER;
  const matrix = columnsOf(t, [() => 1, (at) => at - t0]);
  const fit = solveLeastSquares(
    matrix,
    b,
    t.map(() => 1),
  );
  const s = residualStandardDeviation(fit);
  const y1 = known(fit.estimate([1, 0]));
  const y2 = known(fit.estimate([0, 1]));
  const covariance = (one: LinearEstimate, other: LinearEstimate) =>
    one.gains.reduce((total, gain, index) => total + gain * other.gains[index]!, 0);

  it('the line with its standard uncertainties', () => {
    expect(t.length - fit.rank).toBe(printed.degreesOfFreedom);
    expect(s.toFixed(4)).toBe(printed.s);
    expect(y1.value.toFixed(4)).toBe(printed.y1);
    expect((y1.standard * s).toFixed(4)).toBe(printed.standardOfY1);
    expect(y2.value.toFixed(5)).toBe(printed.y2);
    expect((y2.standard * s).toFixed(5)).toBe(printed.standardOfY2);
  });

  it('the correlation of the two', () => {
    const correlation = covariance(y1, y2) / (y1.standard * y2.standard);
    expect(correlation.toFixed(3)).toBe(printed.correlation);
  });

  it('the correction foretold at 30 °C, with its standard uncertainty', () => {
    const at30 = known(fit.estimate([1, 30 - t0]));
    expect(at30.value.toFixed(4)).toBe(printed.at30);
    expect((at30.standard * s).toFixed(4)).toBe(printed.standardAt30);
  });
});

describe('the pipeline of the NIST/SEMATECH e-Handbook, 4.6.2', () => {
  const { field, lab, unweighted, weighted } = ALASKA_PIPELINE;

  it.each([
    ['without weights', () => 1, unweighted],
    // A weight of 1/lab^1.5 is a standard uncertainty of lab^0.75.
    ['with weights 1/lab^1.5', (at: number) => at ** 0.75, weighted],
  ] as const)('%s', (_, standardAt, expected) => {
    const matrix = columnsOf(lab, [() => 1, (at) => at]);
    const fit = solveLeastSquares(matrix, field, lab.map(standardAt));
    const scatter = residualStandardDeviation(fit);

    expect(field).toHaveLength(107);
    expectClose(scatter, expected.scatter, { absolute: 6e-5 });
    for (const place of [0, 1]) {
      const estimate = known(fit.estimate(pick(2, place)));
      expectClose(estimate.value, expected.b[place]!, { absolute: 6e-6 });
      expectClose(estimate.standard * scatter, expected.deviations[place]!, { absolute: 6e-6 });
    }
  });
});

describe('the 1,1,1 design of the NIST/SEMATECH e-Handbook, 2.3.4: three weights, differences only', () => {
  // Found in a copy of the page. Solution matrix over 3 with item 1 as the restraint R*; the factor
  // of the standard deviation, 0.8165, from memory.
  const design = Float64Array.from([1, 1, 0, -1, 0, 1, 0, -1, -1]);
  const differences = [0.7, -1.3, -1.9];
  const fit = solveLeastSquares(design, differences, [1, 1, 1]);

  it('fixes two of three: no weight by itself, and not their sum', () => {
    expect(fit.rank).toBe(2);
    expect(fit.estimate([1, 0, 0])).toBeUndefined();
    expect(fit.estimate([0, 0, 1])).toBeUndefined();
    expect(fit.estimate([1, 1, 1])).toBeUndefined();
  });

  it.each([
    ['second', [-1, 1, 0], [-2, -1, 1]],
    ['third', [-1, 0, 1], [-1, -2, -1]],
  ] as const)('gives the %s from the restraint with the published gains', (_, weights, thirds) => {
    const estimate = known(fit.estimate(weights));
    thirds.forEach((third, index) => {
      expectClose(estimate.gains[index], third / 3);
    });
    expect(estimate.standard.toFixed(4)).toBe('0.8165');
    expectClose(
      estimate.value,
      thirds.reduce((sum, g, i) => sum + (g * differences[i]!) / 3, 0),
    );
  });
});
