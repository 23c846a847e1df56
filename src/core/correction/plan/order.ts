import type { Plan, PlanStep, Stop } from './plan';

/** Possible plans first, least volume first; then the stopped ones, the nearest to possible first. */
export function byMerit(one: Plan, other: Plan): number {
  return (
    Number(other.possible) - Number(one.possible) ||
    excessIn(one) - excessIn(other) ||
    shortfallIn(one) - shortfallIn(other) ||
    one.volume - other.volume
  );
}

/**
 * Possible plans first, the quickest first; one whose time is not known comes after these.
 *
 * @param secondsFor how long a step takes, in s; undefined where that is not known.
 */
export function byTime(
  plans: readonly Plan[],
  secondsFor: (step: PlanStep) => number | undefined,
): readonly Plan[] {
  return plans
    .map((plan) => ({ plan, seconds: secondsOf(plan, secondsFor) ?? Number.POSITIVE_INFINITY }))
    .sort((one, other) =>
      !one.plan.possible || !other.plan.possible || one.seconds === other.seconds
        ? byMerit(one.plan, other.plan)
        : one.seconds - other.seconds,
    )
    .map(({ plan }) => plan);
}

/** How long a plan takes, s; undefined where the time of a step is not known. */
export function secondsOf(
  plan: Plan,
  secondsFor: (step: PlanStep) => number | undefined,
): number | undefined {
  let total = 0;
  for (const step of plan.steps) {
    const seconds = secondsFor(step);
    if (seconds === undefined) return undefined;
    total += seconds;
  }
  return total;
}

/** Σ of excess over tolerance. */
function excessIn({ stops }: Plan): number {
  return total(stops, (stop) =>
    stop.kind === 'requirement' ? stop.excess / stop.requirement.tolerance : 0,
  );
}

/** Σ of what sizes fall short by, µm. */
function shortfallIn({ stops }: Plan): number {
  return total(stops, (stop) => (stop.kind === 'size' ? stop.shortfall : 0));
}

function total(stops: readonly Stop[], amount: (stop: Stop) => number): number {
  return stops.reduce((sum, stop) => sum + amount(stop), 0);
}
