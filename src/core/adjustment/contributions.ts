import type { LinearForm } from '../part/linear-form';
import type { Cause, Equation } from '../readings/equation';
import type { DoubtComponent } from '../statistics/effective-degrees';

/** What one cause does to one result: a row of its uncertainty budget (GUM 5.1, 7.2.7). */
export interface Contribution extends DoubtComponent {
  readonly cause: Cause;
}

/**
 * The budget of a result, one row a cause, greatest first. Independent doubts add as squares of
 * gain × standard uncertainty; what comes from one shared source adds up with its sign first, so
 * that it cancels where it should (GUM 5.1.2, 5.2.2).
 *
 * @param gains change of the result per µm of each equation's reading.
 */
export function contributionsTo(
  gains: Float64Array,
  equations: readonly Pick<Equation, 'components' | 'shared'>[],
  valueAt: FormValue,
): readonly Contribution[] {
  const rows = new Map<Cause, { variance: number; degreesOfFreedom: number }>();
  const add = (cause: Cause, effect: number, degrees = Number.POSITIVE_INFINITY) => {
    const { variance, degreesOfFreedom } = rows.get(cause) ?? {
      variance: 0,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    };
    rows.set(cause, {
      variance: variance + effect * effect,
      degreesOfFreedom: Math.min(degreesOfFreedom, degrees),
    });
  };
  equations.forEach(({ components }, row) => {
    for (const { cause, standard, degreesOfFreedom } of components) {
      add(cause, gains[row]! * standard, degreesOfFreedom);
    }
  });
  for (const { cause, effect } of sharedEffects(gains, equations, valueAt).values()) {
    add(cause, effect);
  }
  return [...rows]
    .map(([cause, row]) => ({ cause, ...row, standard: Math.sqrt(row.variance) }))
    .map(({ cause, standard, degreesOfFreedom }) => ({ cause, standard, degreesOfFreedom }))
    .sort((a, b) => b.standard - a.standard);
}

/** The value of a form of the unknowns; undefined where the readings do not fix it. */
export type FormValue = (form: LinearForm) => number | undefined;

interface SharedEffect {
  readonly cause: Cause;
  readonly effect: number;
}

/**
 * What one standard uncertainty of each shared source does to the result, by source. Where that
 * depends on the unknowns they are those of the solution; what the readings do not fix counts for
 * nothing.
 */
export function sharedEffects(
  gains: Float64Array,
  equations: readonly Pick<Equation, 'components' | 'shared'>[],
  valueAt: FormValue,
): ReadonlyMap<string, SharedEffect> {
  const totals = new Map<string, { cause: Cause; sure: number; form: Map<string, number> }>();
  equations.forEach(({ shared }, row) => {
    const gain = gains[row]!;
    for (const { cause, source, shift } of shared) {
      const total = totals.get(source) ?? { cause, sure: 0, form: new Map<string, number>() };
      totals.set(source, total);
      if (typeof shift === 'number') total.sure += gain * shift;
      else for (const [name, weight] of shift) addTo(total.form, name, gain * weight);
    }
  });
  const effects = new Map<string, SharedEffect>();
  for (const [source, { cause, sure, form }] of totals) {
    effects.set(source, { cause, effect: sure + (valueAt(form) ?? 0) });
  }
  return effects;
}

function addTo(form: Map<string, number>, name: string, weight: number): void {
  form.set(name, (form.get(name) ?? 0) + weight);
}
