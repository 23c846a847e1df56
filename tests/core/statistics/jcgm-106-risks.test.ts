import { describe, expect, it } from 'vitest';
import { integrate } from '../../../src/core/statistics/integrate';
import { normalBelow, normalBetween, normalDensity } from '../../../src/core/statistics/normal';
import { expectClose } from '../support/close';
import { RESISTORS } from './reference/resistors';

describe('global risks of the resistors in JCGM 106, 9.5', () => {
  const { nominal, lower, upper, process, standard } = RESISTORS;

  it('the part of the process that conforms', () => {
    const part = normalBetween(lower, upper, nominal, process);
    expect(part.toFixed(1)).toBe(RESISTORS.conforming);
    expectClose(part, 0.9044192955, { absolute: 1e-10 });
  });

  it.each(RESISTORS.risks)('with a guard of $guard ohm', ({ guard, consumer, producer }) => {
    /** Probability that a resistor of `value` is accepted. */
    const accepted = (value: number) =>
      normalBetween(lower + guard, upper - guard, value, standard);
    const density = (value: number) => normalDensity((value - nominal) / process) / process;
    const over = (f: (value: number) => number, from: number, to: number) =>
      integrate(f, from, to, 1e-12);
    const far = 8 * process;
    const wrongly = (value: number) => density(value) * accepted(value);
    expectClose(
      over(wrongly, nominal - far, lower) + over(wrongly, upper, nominal + far),
      consumer,
      { relative: 5e-6 },
    );
    expectClose(
      over((value) => density(value) * (1 - accepted(value)), lower, upper),
      producer,
      { relative: 5e-6 },
    );
  });

  it('comes to the two digits remembered of the published risks', () => {
    for (const { consumer, producer, published } of RESISTORS.risks) {
      if (published === undefined) continue;
      expect([consumer.toFixed(2), producer.toFixed(2)]).toEqual(published);
    }
  });

  it('an acceptance limit without a guard accepts half of what lies on it', () => {
    expectClose(normalBelow(0), 0.5);
  });
});
