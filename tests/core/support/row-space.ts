import type { LinearForm } from '../../../src/core/part/linear-form';

/** Less than this of a row, scaled to 1, is rounding: heights and places are whole numbers of mm. */
const ROUNDING = 1e-9;

/** Whether `form` is a sum of `rows`, by Gauss' elimination: apart from the decomposition of the core. */
export function isInRowSpace(form: LinearForm, rows: readonly LinearForm[]): boolean {
  const names = [...new Set([...rows, form].flatMap((row) => [...row.keys()]))];
  const reduced: { readonly pivot: number; readonly row: number[] }[] = [];
  const reduce = (next: LinearForm) => {
    const row = unitOf(names.map((name) => next.get(name) ?? 0));
    for (const { pivot, row: other } of reduced) {
      const factor = row[pivot]!;
      for (let j = 0; j < row.length; j += 1) row[j] = row[j]! - factor * other[j]!;
    }
    return row;
  };
  for (const next of rows) {
    const row = reduce(next);
    const sizes = row.map(Math.abs);
    const greatest = Math.max(0, ...sizes);
    if (greatest < ROUNDING) continue;
    const pivot = sizes.indexOf(greatest);
    const by = row[pivot]!;
    reduced.push({ pivot, row: row.map((entry) => entry / by) });
  }
  return reduce(form).every((entry) => Math.abs(entry) < ROUNDING);
}

function unitOf(row: readonly number[]): number[] {
  const greatest = Math.max(...row.map(Math.abs));
  return row.map((entry) => (greatest === 0 ? 0 : entry / greatest));
}
