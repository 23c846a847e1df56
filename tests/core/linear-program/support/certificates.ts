import type { LinearProgram, ProgramAnswer } from '../../../../src/core/linear-program/program';

/*
 * The proofs that come with an answer, checked by multiplication and addition only, apart from how
 * they were found. Each sum may be off by rounding: by a part of the sum of its terms' sizes.
 */
const ROUNDING = 1e-9;

type Optimal = Extract<ProgramAnswer, { readonly status: 'optimal' }>;

/** Fails where the answer is not proved by what comes with it. */
export function verifyAnswer(program: LinearProgram, answer: ProgramAnswer): void {
  if (answer.status === 'infeasible') verifyContradiction(program, answer.certificate);
  else {
    verifyKept(program, answer.variables);
    if (answer.status === 'optimal') verifyOptimum(program, answer);
    else verifyRay(program, answer.ray, answer.objective);
  }
}

/** The variables keep to all rows and bounds. */
function verifyKept({ rows, free }: LinearProgram, variables: Float64Array): void {
  variables.forEach((value, j) => {
    if (!free?.[j]) holds(value >= 0);
  });
  for (const { weights, sense, limit } of rows) {
    const { total, size } = sumOf(weights, variables);
    const rounding = ROUNDING * (size + Math.abs(limit)) + tiny(rows, limit);
    if (sense !== '<=') holds(total - limit >= -rounding);
    if (sense !== '>=') holds(total - limit <= rounding);
  }
}

/** Beside limits of 1000, one of 0 may be missed by rounding of 1000. */
function tiny(rows: LinearProgram['rows'], limit: number): number {
  return ROUNDING * Math.max(Math.abs(limit), ...rows.map((row) => Math.abs(row.limit)));
}

/** Duality: no variables that keep to the rows have a value below Σ multiplier·limit. */
function verifyOptimum({ objectives, rows, free }: LinearProgram, answer: Optimal): void {
  const [costs] = objectives;
  const { value, multipliers } = answer.optima[0]!;
  rows.forEach(({ sense }, i) => {
    if (sense === '>=') holds(multipliers[i]! >= 0);
    if (sense === '<=') holds(multipliers[i]! <= 0);
  });
  answer.variables.forEach((_, j) => {
    const column = rows.map(({ weights }) => weights[j]!);
    const { total, size } = sumOf(column, multipliers);
    const left = costs![j]! - total;
    const rounding = ROUNDING * (size + greatest(costs!));
    holds(left >= -rounding);
    if (free?.[j]) holds(left <= rounding);
  });
  const proved = sumOf(
    rows.map(({ limit }) => limit),
    multipliers,
  );
  const own = sumOf(costs!, answer.variables);
  const tiny = ROUNDING * greatest(costs!) * greatest(answer.variables);
  holds(Math.abs(value - own.total) <= ROUNDING * own.size + tiny);
  holds(Math.abs(value - proved.total) <= ROUNDING * (own.size + proved.size) + tiny);
}

/** Farkas: the rows, added up with these weights, say 0 ≥ 1. */
function verifyContradiction({ rows, free, objectives }: LinearProgram, certificate: Float64Array) {
  rows.forEach(({ sense }, i) => {
    if (sense === '>=') holds(certificate[i]! >= 0);
    if (sense === '<=') holds(certificate[i]! <= 0);
  });
  for (let j = 0; j < objectives[0]!.length; j += 1) {
    const column = rows.map(({ weights }) => weights[j]!);
    const { total, size } = sumOf(column, certificate);
    const rounding = ROUNDING * (size + greatest(column) * greatest(certificate));
    holds(total <= rounding);
    if (free?.[j]) holds(total >= -rounding);
  }
  const limits = rows.map(({ limit }) => limit);
  const { total, size } = sumOf(limits, certificate);
  holds(Math.abs(total - 1) <= ROUNDING * size);
}

function verifyRay({ rows, free, objectives }: LinearProgram, ray: Float64Array, k: number): void {
  const longest = greatest(ray);
  ray.forEach((step, j) => {
    if (!free?.[j]) holds(step >= -ROUNDING * longest);
  });
  for (const { weights, sense } of rows) {
    const { total, size } = sumOf(weights, ray);
    const rounding = ROUNDING * (size + greatest(weights) * longest);
    if (sense !== '<=') holds(total >= -rounding);
    if (sense !== '>=') holds(total <= rounding);
  }
  holds(sumOf(objectives[k]!, ray).total < 0);
}

function sumOf(weights: ArrayLike<number>, values: ArrayLike<number>) {
  let total = 0;
  let size = 0;
  for (let i = 0; i < weights.length; i += 1) {
    total += weights[i]! * values[i]!;
    size += Math.abs(weights[i]! * values[i]!);
  }
  return { total, size };
}

function greatest(list: ArrayLike<number>): number {
  return Math.max(0, ...Array.from(list, Math.abs));
}

/** `expect` takes its time, and this is asked a million times. */
function holds(condition: boolean): void {
  if (!condition) throw new Error('The answer is not proved by what comes with it');
}
