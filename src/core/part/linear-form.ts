/**
 * A weighted sum of unknowns, kept by name: what a reading measures and what a requirement asks
 * for are both such sums, so that either can be put beside the other.
 */
export type LinearForm = ReadonlyMap<string, number>;

/** `factor` × `form`. */
export function scaled(form: LinearForm, factor: number): LinearForm {
  return new Map([...form].map(([name, weight]) => [name, weight * factor]));
}

/** The sum of `forms`. */
export function sum(...forms: readonly LinearForm[]): LinearForm {
  const total = new Map<string, number>();
  for (const form of forms) {
    for (const [name, weight] of form) total.set(name, (total.get(name) ?? 0) + weight);
  }
  return total;
}

/** One unknown by its name, with weight 1. */
export function unknown(name: string): LinearForm {
  return new Map([[name, 1]]);
}

/** The value of `form` where the unknowns have `values`; an unknown without a value counts as 0. */
export function evaluate(form: LinearForm, values: ReadonlyMap<string, number>): number {
  let total = 0;
  for (const [name, weight] of form) total += weight * (values.get(name) ?? 0);
  return total;
}
