import { signal } from '@preact/signals';
import { scaledEstimate } from '../core/adjustment/scaled-estimate';
import { chartOfUsual, type IndividualsChart } from '../core/statistics/control-chart';
import { expanded } from '../core/statistics/coverage';
import { type RunSignal, runSignals } from '../core/statistics/run-rules';
import type { SetupEntry } from '../entry/setup-entry';
import type { InspectionRecord, PartRecord } from '../store/records';
import { loadChain } from '../store/shop-store';
import { workOutFlat } from './answers';
import { parts, shop } from './shop';

/** What one inspection found of a comparator: its zero, or the lean of its column. */
export interface ComparatorPoint {
  readonly at: string;
  readonly part: PartRecord;
  readonly inspection: string;
  /** µm; a lean over 100 mm. */
  readonly value: number;
  /** Expanded uncertainty, µm. */
  readonly expanded: number;
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

/** A lean is told over this length, mm. */
const LEAN_OVER = 100;

/** By part: what its inspections found. */
const gathered = signal<ReadonlyMap<string, readonly Found[]>>(new Map());

interface Found extends ComparatorPoint {
  readonly name: string;
  readonly title: string;
  readonly kind: 'zero' | 'lean';
}

/** Every comparator setting and column of the shop, as far as its parts have been gone through. */
export function comparatorHistories(): readonly ComparatorHistory[] {
  const all = [...gathered.value.values()].flat().sort((a, b) => a.at.localeCompare(b.at));
  // The last of each has the name that it goes by now.
  const latest = new Map(all.map((found) => [found.name, found]));
  return [...latest.values()].map(({ name, title, kind }) => {
    return { name, title, kind, points: all.filter((found) => found.name === name) };
  });
}

let gathering = false;

/** Goes through all parts, one at a time, so that nothing waits for it, until `isWanted` says no more. */
export async function gatherComparators(isWanted: () => boolean): Promise<void> {
  if (gathering) return;
  gathering = true;
  try {
    const all = new Map<string, readonly Found[]>();
    for (const part of [...parts.value.values()].reverse()) {
      if (!isWanted()) return;
      if (part.example || part.removed !== undefined) continue;
      const { records } = await loadChain(part.id);
      const inspections = records.filter((record) => record.kind === 'inspection');
      const found = inspections.flatMap((inspection) => foundBy(inspection, part));
      if (found.length > 0) gathered.value = new Map(all.set(part.id, found));
    }
  } finally {
    gathering = false;
  }
}

/** What a finished inspection, or one that fixes all that is asked, says of its comparators. */
export function foundBy(inspection: InspectionRecord, part: PartRecord): readonly Found[] {
  const { answer } = workOutFlat(inspection, part.entry);
  if (answer === undefined) return [];
  const isComplete = inspection.closed !== undefined || answer.findings.every(({ fixed }) => fixed);
  if (!isComplete) return [];
  return answer.comparators.flatMap((comparator): readonly Found[] => {
    const { kind, estimate } = comparator;
    const id = kind === 'zero' ? comparator.setting : comparator.column;
    const setup = inspection.setups.find((one) => one.id === id);
    if (estimate === undefined || setup === undefined) return [];
    const told = scaledEstimate(estimate, kind === 'lean' ? LEAN_OVER : 1);
    const at = inspection.closed?.at ?? inspection.made;
    const point = { at, part, inspection: inspection.id };
    return [{ ...point, kind, ...filedAs(setup), value: told.value, expanded: expanded(told) }];
  });
}

/**
 * A zero belongs to a comparator at a setting, told by the heights of nose and indicator; a lean to a
 * column. Which one it was is told where somebody has said so: it keeps its id under another name.
 */
function filedAs(setup: SetupEntry): { readonly name: string; readonly title: string } {
  const instrument = 'instrument' in setup ? setup.instrument : undefined;
  if (setup.kind !== 'nose comparator') {
    return { name: instrument?.id ?? 'Column', title: instrument?.name ?? 'Column' };
  }
  const [nose, indicator] = [setup.noseHeight, setup.indicatorHeight].map(
    ({ text, unit }) => `${text.trim()} ${unit}`,
  );
  const setting = `Nose at ${nose}, indicator at ${indicator}`;
  if (instrument === undefined) return { name: setting, title: setting };
  return { name: `${instrument.id}: ${setting}`, title: `${instrument.name}: ${setting}` };
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

export function currentRun({ name, points: all }: ComparatorHistory): ComparatorRun {
  const setAnew = shop.value.setAnew?.[name]?.at(-1);
  const points = all.filter(({ at }) => setAnew === undefined || at > setAnew);
  const values = points.map(({ value }) => value);
  const chart = chartOfUsual(values);
  const signals = chart === undefined ? [] : runSignals(values, chart);
  const moved = new Set(signals.map(({ places }) => places.at(-1)));
  const lastGood = points.findLast((_, place) => !moved.has(place));
  return { points, chart, signals, lastGood, setAnew };
}
