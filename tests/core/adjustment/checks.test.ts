import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { BARELY } from '../../../src/core/adjustment/alternatives';
import { type EquationCheck, suspectsAmong } from '../../../src/core/adjustment/checks';
import { unknown } from '../../../src/core/part/linear-form';
import type { Equation } from '../../../src/core/readings/equation';
import { expectClose } from '../support/close';

/** A reading of one length by itself, known to `standard`. */
function lengthRead(reading: string, value: number, standard = 1): Equation {
  const components = [{ cause: 'indicator resolution', standard } as const];
  return { reading, form: unknown('length'), value, components, shared: [] };
}

function check(reading: string, standardised: number | undefined): EquationCheck {
  return { reading, residual: 0, redundancy: 1, standardised, blunder: undefined };
}

const named = (checks: readonly EquationCheck[]) => checks.map(({ reading }) => reading);

describe('the checks of readings', () => {
  it('hold each against the mean of all: redundancy 1 - 1/n, by hand', () => {
    // The mean of 0, 0, 0 and 8 is 2; w = 6/√(3/4), and the blunder 6/(3/4) = 8.
    const { checks } = adjust([0, 0, 0, 8].map((value, index) => lengthRead(`${index}`, value)));
    const last = checks[3]!;
    expectClose(last.residual, 6);
    expectClose(last.redundancy, 0.75);
    expectClose(last.standardised, 6 / Math.sqrt(0.75));
    expectClose(last.blunder, 8);
  });

  it('say nothing of one that the others barely check', () => {
    // One a tenth as doubtful as the other has the redundancy 0.01/1.01, a hair below the bound.
    const barely = adjust([lengthRead('sure', 0, 0.1), lengthRead('vague', 3)]).checks;
    expect(barely[0]!.redundancy).toBeLessThan(BARELY);
    expect(barely[0]!.standardised).toBeUndefined();
    expect(barely[0]!.blunder).toBeUndefined();
    const checked = adjust([lengthRead('sure', 0, 0.11), lengthRead('vague', 3)]).checks;
    expect(checked[0]!.redundancy).toBeGreaterThan(BARELY);
    expect(checked[0]!.standardised).toBeLessThan(0);
    expect(checked[0]!.blunder).toBeLessThan(0);
  });
});

describe('suspects', () => {
  it('are none up to the limit, whichever way, and none where nothing is checked', () => {
    expect(suspectsAmong([check('a', 3), check('b', -3)], 3)).toEqual([]);
    expect(suspectsAmong([check('a', undefined), check('b', undefined)], 3)).toEqual([]);
    expect(suspectsAmong([], 3)).toEqual([]);
  });

  it('are the one furthest off and those that cannot be told from it, and no other', () => {
    const checks = [
      check('near', 4),
      check('far', -5),
      check('alike', 5 - 1e-7),
      check('no', undefined),
    ];
    expect(named(suspectsAmong(checks, 3))).toEqual(['far', 'alike']);
    expect(named(suspectsAmong([check('far', 5), check('less', 5 - 1e-5)], 3))).toEqual(['far']);
    // Where nothing else is checked, what stands at the very limit is still none.
    expect(named(suspectsAmong([check('over', 3.01), check('at', 3)], 3))).toEqual(['over']);
  });
});
