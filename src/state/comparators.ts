import { computed } from '@preact/signals';
import { groupedBy } from '../core/grouped-by';
import { chartOfUsual, type IndividualsChart } from '../core/statistics/control-chart';
import { type RunSignal, runSignals } from '../core/statistics/run-rules';
import type { FoundComparator } from '../store/found';
import type { PartRecord } from '../store/records';
import { found } from './found';
import { LEAN_KEPT_OVER } from './found-in';
import { inOrderOf } from './oldest-first';
import { parts, shop } from './shop';

/** What one inspection found of a comparator: its zero, or the lean of its column. */
export interface ComparatorPoint extends FoundComparator {
  readonly part: PartRecord;
}

/** All that is known of one comparator setting or column, the oldest first. */
export interface ComparatorHistory {
  /** What it is filed under. */
  readonly name: string;
  /** What it is called. */
  readonly title: string;
  readonly kind: 'zero' | 'lean';
  readonly points: readonly ComparatorPoint[];
}

/** Every comparator setting and column of the shop, as far as its parts have been gone through, the one read first at the top. */
export const comparatorHistories = computed((): readonly ComparatorHistory[] => {
  const points = [...found.value].flatMap(([id, { comparators }]) => {
    const part = parts.value.get(id);
    if (part === undefined || part.removed !== undefined) return [];
    return comparators.map((one): ComparatorPoint => ({ ...one, part }));
  });
  const groups = groupedBy(points, ({ name }) => name);
  return inOrderOf([...groups.values()].map(historyOf), begun);
});

function historyOf(group: ComparatorPoint[]): ComparatorHistory {
  const points = inOrderOf(group, ({ at }) => at);
  // The last has the name that it goes by now.
  const { name, title, kind } = points.at(-1) as ComparatorPoint;
  return { name, title, kind, points };
}

function begun({ points }: ComparatorHistory): string {
  return points[0]?.at ?? '';
}

/** A comparator since it was last set anew. */
export interface ComparatorRun {
  readonly points: readonly ComparatorPoint[];
  /** Undefined before the second point. */
  readonly chart: IndividualsChart | undefined;
  readonly signals: readonly RunSignal[];
  /** The last point that no rule found anything at; none where each gave a signal. */
  readonly lastGood: ComparatorPoint | undefined;
  /** When it was set anew, where it was. */
  readonly setAnew: string | undefined;
}

/** The run as it goes on; a lean is told over `length` mm. */
export function currentRun(
  { name, kind, points: all }: ComparatorHistory,
  length = LEAN_KEPT_OVER,
): ComparatorRun {
  const setAnew = shop.value.setAnew?.[name]?.at(-1);
  const times = kind === 'lean' ? length / LEAN_KEPT_OVER : 1;
  const points = all
    .filter(({ at }) => setAnew === undefined || at > setAnew)
    .map((point) => {
      return { ...point, value: point.value * times, expanded: point.expanded * times };
    });
  const values = points.map(({ value }) => value);
  const chart = chartOfUsual(values);
  const signals = chart === undefined ? [] : runSignals(values, chart);
  const moved = new Set(signals.map(({ places }) => places.at(-1)));
  const lastGood = points.findLast((_, place) => !moved.has(place));
  return { points, chart, signals, lastGood, setAnew };
}
