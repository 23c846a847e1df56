import { describe, expect, it } from 'vitest';
import { adjust, type Estimate } from '../../../src/core/adjustment/adjustment';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import { evaluate, type LinearForm, unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { leanOf, zeroOfSetting } from '../../../src/core/readings/unknowns';
import { zoneForms } from '../../../src/core/zones/requirement-forms';
import { known } from '../support/known';
import { manyRandoms } from '../support/random';
import { simulatedReadings, someTruth } from '../support/simulated-inspection';
import { BLOCK } from '../support/worked-block';

/** Heights set so badly that their doubt shows beside the others. */
const KIT = { ...DEFAULT_KIT, heightSetting: 1 };
const INSPECTIONS = 2000;
const SHARE = 0.95;
/** Three standard deviations of a binomial share. */
const SAMPLING = 3 * Math.sqrt((SHARE * (1 - SHARE)) / INSPECTIONS);

const ASKED: ReadonlyMap<string, LinearForm> = new Map([
  ['right to bottom, by two methods and a micrometer', outOfSquare('right', 'bottom')],
  ['left to bottom, likewise', outOfSquare('left', 'bottom')],
  ['back to bottom, by an assumption', outOfSquare('back', 'bottom')],
  ['taper of right and left', taper('right', 'top')],
  ['zone of right to bottom', zoneForms({ face: 'right', datum: 'bottom' }, BLOCK)[0]!],
  ['zero of the comparator', unknown(zeroOfSetting('comparator'))],
  ['lean of the column', unknown(leanOf('column'))],
]);

/** For every inspection: each estimate, with what is true. */
const outcomes = manyRandoms(INSPECTIONS, 2024).map((random) => {
  const truth = someTruth(random);
  const readings = simulatedReadings(truth, KIT, random);
  const adjustment = adjust(equationsOf(readings, BLOCK, KIT));
  return new Map(
    [...ASKED].map(([name, form]) => [
      name,
      { estimate: known(adjustment.estimate(form)), truth: evaluate(form, truth) },
    ]),
  );
});

/** The share of inspections in which value ± `times` standard uncertainties holds the truth. */
function shareHeld(name: string, times: number): number {
  const holds = ({ estimate, truth }: { estimate: Estimate; truth: number }) =>
    Math.abs(estimate.value - truth) <= times * estimate.standard;
  return outcomes.filter((outcome) => holds(known(outcome.get(name)))).length / INSPECTIONS;
}

describe(`in ${INSPECTIONS} simulated inspections`, () => {
  it.each([...ASKED.keys()])('value ± 1.96 standard holds the truth in 95 of 100: %s', (name) => {
    expect(Math.abs(shareHeld(name, 1.96) - SHARE)).toBeLessThan(SAMPLING);
  });

  it.each([...ASKED.keys()])('half or twice the uncertainty would not: %s', (name) => {
    expect(shareHeld(name, 1.96 / 2)).toBeLessThan(SHARE - SAMPLING);
    expect(shareHeld(name, 1.96 * 2)).toBeGreaterThan(SHARE + SAMPLING);
  });

  it('the doubt in heights shows, so that leaving it out would be seen', () => {
    const kit = { ...KIT, heightSetting: 0 };
    const name = 'right to bottom, by two methods and a micrometer';
    const random = manyRandoms(1, 2024)[0]!;
    const readings = simulatedReadings(someTruth(random), KIT, random);
    const without = adjust(equationsOf(readings, BLOCK, kit)).estimate(known(ASKED.get(name)));
    const withHeights = known(known(outcomes[0]).get(name)).estimate;
    expect(known(without).standard).toBeLessThan(0.9 * withHeights.standard);
  });
});
