import { type AnyFinding, allFindings } from '../core/inspection/any-finding';
import { type InspectionAnswer, inspect } from '../core/inspection/inspect';
import type { DoubtComponent } from '../core/statistics/effective-degrees';
import { nextEmpty } from '../entry/next-empty';
import { readSetups } from '../entry/read-setups';
import { readingNames } from '../entry/reading-names';
import type { InspectionRecord } from '../store/records';
import type { Worked } from './answers';
import { kit } from './kits';
import { level } from './shop-settings';

/** The reading that comes next, and what will be known with it that is not known yet. */
export interface NextToRead {
  readonly name: string;
  readonly requirements: readonly AnyFinding['requirement'][];
  /** True where it shows what the two sides differ by. */
  readonly difference: boolean;
  /** The zones of the requirements as they will be known, by the ids of these. */
  readonly zones: ReadonlyMap<string, DoubtComponent>;
}

/** What was worked out is not worked out anew at each drawing. */
const known = new WeakMap<object, NextToRead | undefined>();

/** The reading that comes next; undefined where all is read, or something is wrong. */
export function nextToRead(inspection: InspectionRecord, worked: Worked): NextToRead | undefined {
  // Form that is taken in later changes nothing here.
  const key = worked.answer?.adjustment ?? worked;
  if (!known.has(key)) known.set(key, next(inspection, worked));
  return known.get(key);
}

function next({ setups }: InspectionRecord, { part, answer, silence }: Worked) {
  if (part === undefined || (silence !== undefined && silence !== 'nothing read')) return undefined;
  const empty = nextEmpty(setups, part);
  if (empty === undefined || kit.value === undefined || level.value === undefined) return undefined;
  const { readings, planned } = readSetups(empty.filled, part);
  const name = readingNames(setups).get(empty.id) ?? '';
  if (readings.length <= (answer?.readings.length ?? 0)) {
    return { name, requirements: [], difference: false, zones: new Map() };
  }
  const then = inspect(part, readings, kit.value, level.value, planned);
  const before = new Set(fixedIn(answer).map(({ id }) => id));
  return {
    name,
    requirements: fixedIn(then).filter(({ id }) => !before.has(id)),
    difference: knowsDifference(then) && !knowsDifference(answer),
    zones: new Map(
      then.findings.flatMap((one) => (one.fixed ? [[one.requirement.id, one.zone]] : [])),
    ),
  };
}

function fixedIn(answer: InspectionAnswer | undefined): readonly AnyFinding['requirement'][] {
  return allFindings(answer).flatMap(({ fixed, requirement }) => (fixed ? [requirement] : []));
}

function knowsDifference(answer: InspectionAnswer | undefined): boolean {
  return (answer?.sides ?? []).some(({ difference }) => difference !== undefined);
}
