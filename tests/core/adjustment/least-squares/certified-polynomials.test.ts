import { describe, expect, it } from 'vitest';
import { RANK_TOLERANCE } from '../../../../src/core/adjustment/least-squares';
import type { CertifiedPolynomial } from '../../reference/certified-polynomial';
import { FILIP } from '../../reference/strd-filip';
import { NORRIS } from '../../reference/strd-norris';
import { PONTIUS } from '../../reference/strd-pontius';
import {
  WAMPLER_1,
  WAMPLER_2,
  WAMPLER_3,
  WAMPLER_4,
  WAMPLER_5,
} from '../../reference/strd-wampler';
import { expectDigits } from '../../support/digits';
import { known } from '../../support/known';
import { fitPolynomial, pick, residualStandardDeviation } from '../../support/polynomial';

/*
 * The digits asked for are those reached, less half a digit. Powers of x are taken as they are,
 * without centring, to be as hard on the solver as the data sets are meant to be. Residuals of a
 * perfect fit (Wampler1 and 2) are rounding: their digits are absolute.
 */
function resultsOf(set: CertifiedPolynomial, tolerance = RANK_TOLERANCE) {
  const count = set.parameters.length;
  const fit = fitPolynomial(set.x, set.y, count - 1, tolerance);
  const scatter = residualStandardDeviation(fit);
  const estimates = set.parameters.map((_, place) => known(fit.estimate(pick(count, place))));
  return {
    parameters: estimates.map(({ value }) => value),
    // NIST scales with the scatter of the residuals; the solver took σ = 1.
    deviations: estimates.map(({ standard }) => standard * scatter),
    scatter,
  };
}

describe('NIST StRD linear regression: digits that agree with the certified values', () => {
  it.each([
    // Reached: 12.6 of the parameters, 13.8 of their standard deviations, and so on.
    ['Norris', NORRIS, 12.1, 13.3],
    ['Pontius', PONTIUS, 11.7, 13.0],
    ['Filip', FILIP, 6.6, 6.5],
    ['Wampler1', WAMPLER_1, 9.3, 9.2],
    ['Wampler2', WAMPLER_2, 12.4, 13.8],
    ['Wampler3', WAMPLER_3, 8.8, 13.2],
    ['Wampler4', WAMPLER_4, 7.4, 13.1],
    ['Wampler5', WAMPLER_5, 5.4, 13.1],
  ] as const)('of %s', (_, set, parameterDigits, deviationDigits) => {
    const { parameters, deviations, scatter } = resultsOf(set);

    expectDigits(parameters, set.parameters, parameterDigits);
    expectDigits(deviations, set.standardDeviations, deviationDigits);
    expectDigits([scatter], [set.residualStandardDeviation], deviationDigits);
  });
});

describe('Filip, at the edge of what double precision can tell apart', () => {
  it('is the same to the last bit with no rank tolerance at all: the usual one cuts nothing', () => {
    expect(resultsOf(FILIP)).toEqual(resultsOf(FILIP, 0));
  });

  it('is said not to be fixed where a coarser tolerance cuts it, and no number is made up', () => {
    const fit = fitPolynomial(FILIP.x, FILIP.y, 10, 1e-8);
    expect(fit.rank).toBeLessThan(11);
    for (let place = 0; place <= 10; place += 1) {
      expect(fit.estimate(pick(11, place))).toBeUndefined();
    }
  });
});
