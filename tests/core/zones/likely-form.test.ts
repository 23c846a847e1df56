import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/core/statistics/random';
import { leastSquaresLine } from '../../../src/core/zones/form/straightness';
import { likelyForm } from '../../../src/core/zones/likely-form';

function group(residuals: readonly number[], standard: number) {
  return {
    name: 'A',
    places: residuals.map((_, index) => [index]),
    residuals: Float64Array.from(residuals),
    standard,
    fitted: 2,
  };
}

describe('likely form', () => {
  it('is the residuals where the readings are free of noise', () => {
    const { residuals, standard } = likelyForm(group([-1, 2, -1], 0));
    expect([...residuals]).toEqual([-1, 2, -1]);
    expect(standard).toBe(0);
  });

  it('is none where noise explains all of them', () => {
    // s² = 6 with one degree of freedom, σ² = 6.25.
    const { residuals, standard } = likelyForm(group([-1, 2, -1], 2.5));
    expect([...residuals].every((residual) => Math.abs(residual) === 0)).toBe(true);
    expect(standard).toBe(0);
  });

  it('is the part that noise does not explain', () => {
    // s² = 6, σ² = 1.5: three quarters of it is form.
    const { residuals, standard } = likelyForm(group([-1, 2, -1], Math.sqrt(1.5)));
    expect(residuals[1]).toBeCloseTo(1.5, 12);
    expect(standard).toBeCloseTo(Math.sqrt(1.5 * 0.75), 12);
  });

  it('of nothing but equal readings is nothing', () => {
    expect([...likelyForm(group([0, 0, 0], 0)).residuals]).toEqual([0, 0, 0]);
  });

  it('comes nearer to the true form than the residuals do', () => {
    // 2,000 faces with form of the size of the noise; the estimator's whole promise.
    const random = randomFrom(7);
    let [raw, likely] = [0, 0];
    for (let face = 0; face < 2000; face += 1) {
      const heights = Array.from({ length: 9 }, (_, index) => index);
      const lineOf = (values: readonly number[]) =>
        leastSquaresLine(heights.map((u, index) => ({ u, deviation: values[index]! }))).residuals;
      const form = lineOf(heights.map(() => random.normal()));
      const seen = lineOf(form.length > 0 ? [...form].map((one) => one + random.normal()) : []);
      const guess = likelyForm({ ...group([...seen], 1) }).residuals;
      heights.forEach((_, index) => {
        raw += (seen[index]! - form[index]!) ** 2;
        likely += (guess[index]! - form[index]!) ** 2;
      });
    }
    expect(likely).toBeLessThan(0.8 * raw);
  });
});
