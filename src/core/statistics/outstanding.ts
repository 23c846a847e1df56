import { studentQuantile } from './student';

/** Share of sets of good repeats from which one is set aside wrongly. */
const SIGNIFICANCE = 0.001;

/**
 * Groups of repeats without the one that stands out from all the others, where one does: its
 * distance from the mean of its group, over the spread that all the others show, is beyond Student's
 * distribution (the deleted residual; Cook and Weisberg, Residuals and Influence in Regression, 1982,
 * 2.2.1, with Bonferroni's bound for the number of repeats; from memory).
 */
export function withoutOutstanding(
  groups: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const repeated = groups.filter((group) => group.length > 1);
  const count = repeated.reduce((total, group) => total + group.length, 0);
  const degrees = count - repeated.length;
  if (degrees < 2) return groups;
  const limit = Math.abs(studentQuantile(SIGNIFICANCE / (2 * count), degrees - 1));
  const squares = repeated.reduce((total, group) => total + squaresAboutMean(group), 0);
  const far = ({ off, size }: Distance) => {
    const own = (off * off * size) / (size - 1);
    const others = Math.max(0, squares - own) / (degrees - 1);
    return own > limit * limit * others ? own : 0;
  };
  const distances = groups.flatMap(distancesIn).sort((a, b) => far(b) - far(a));
  const [furthest] = distances;
  if (furthest === undefined || far(furthest) === 0) return groups;
  return groups.map((group) =>
    group === furthest.group ? group.filter((_, place) => place !== furthest.place) : group,
  );
}

interface Distance {
  readonly group: readonly number[];
  readonly place: number;
  /** From the mean of the group. */
  readonly off: number;
  readonly size: number;
}

function distancesIn(group: readonly number[]): readonly Distance[] {
  if (group.length < 2) return [];
  const mean = meanOf(group);
  return group.map((value, place) => ({ group, place, off: value - mean, size: group.length }));
}

function squaresAboutMean(group: readonly number[]): number {
  const mean = meanOf(group);
  return group.reduce((total, value) => total + (value - mean) ** 2, 0);
}

function meanOf(group: readonly number[]): number {
  return group.reduce((total, value) => total + value, 0) / group.length;
}
