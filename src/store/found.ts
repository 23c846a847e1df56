import { promisifyRequest } from 'idb-keyval';
import type { Pass } from '../core/correction/rates/pass';
import { keysUnder, records } from './database';
import { chainPrefix, foundKey, keyOf } from './keys';
import {
  type FoundMark,
  type InspectionRecord,
  type PartRecord,
  type StoredRecord,
  type SummaryRecord,
  WORK_METHODS,
  type WorkRecord,
} from './records';
import { isSame } from './three-way';
import { fields, list, moment, number, oneOf, text } from './whole/checks';
import { readStored } from './whole/read-stored';

/*
 * What the inspections of a part have found of comparators and rates: worked out from its chain and
 * made again from it at any time, so that it belongs in no backup. It is long in a large shop, so it
 * lies beside the summary, which alone says whether it still holds.
 */

/** What the inspections of one part have found. */
export interface Found {
  readonly part: string;
  /** When it was worked out: the mark in the summary has the same. */
  readonly at: string;
  readonly comparators: readonly FoundComparator[];
  readonly passes: readonly FoundPass[];
}

/** The zero of a comparator at a setting, or the lean of a column. */
export interface FoundComparator {
  readonly at: string;
  readonly inspection: string;
  readonly kind: 'zero' | 'lean';
  /** What it is filed under, and what it is called. */
  readonly name: string;
  readonly title: string;
  /** µm; a lean over 100 mm. */
  readonly value: number;
  /** Expanded uncertainty, µm. */
  readonly expanded: number;
}

/** A piece of work that tells how fast it cuts. */
export interface FoundPass extends Pass {
  readonly work: PassWork;
}

/** What is told of the work itself. */
export type PassWork = Pick<
  WorkRecord,
  'id' | 'part' | 'made' | 'method' | 'abrasive' | 'amount' | 'notLearned'
>;

/** What lies there of the parts, whether it still holds or not; what is damaged is passed over, to be made again. */
export async function readFound(parts: readonly string[]): Promise<readonly Found[]> {
  const read = await records('readonly', (store) =>
    Promise.all(parts.map((part) => promisifyRequest<unknown>(store.get(foundKey(part))))),
  );
  return read.filter((one): one is Found => isFound(one));
}

/** Finds with all that they were worked out from. */
export interface ToKeep {
  readonly found: Found;
  readonly mark: FoundMark;
  readonly part: PartRecord;
  readonly links: readonly (InspectionRecord | WorkRecord)[];
  /** The summary that is to say that they hold, as it lies there; undefined where there is none. */
  readonly summary: SummaryRecord | undefined;
  /** What it begins with where there is none. */
  readonly base: Pick<SummaryRecord, 'format' | 'made' | 'changed'>;
}

/**
 * Keeps finds in one transaction, but for those of a part that lies there in another state by now than
 * they were worked out from.
 *
 * @returns the summaries that now say that the finds hold.
 */
export function keepFound(all: readonly ToKeep[]): Promise<readonly SummaryRecord[]> {
  return records('readwrite', async (store) => {
    const kept = await Promise.all(all.map((one) => keepOne(store, one)));
    await promisifyRequest(store.transaction);
    return kept.flat();
  });
}

async function keepOne(store: IDBObjectStore, one: ToKeep): Promise<readonly SummaryRecord[]> {
  const { found, mark, summary, base } = one;
  const { part } = found;
  const marked = { ...(summary ?? { ...base, kind: 'summary' as const, part }), found: mark };
  const key = keyOf(marked);
  const [there, isTheSame] = await Promise.all([
    promisifyRequest<unknown>(store.get(key)),
    liesThereAs(store, one),
  ]);
  if (!isTheSame || !isSame(there, summary)) return [];
  store.put(found, foundKey(part));
  store.put(marked, key);
  return [marked];
}

/** Whether the part and its chain lie there in the states that the finds were worked out from. */
async function liesThereAs(store: IDBObjectStore, { part, links }: ToKeep): Promise<boolean> {
  const [own, chain] = await Promise.all([
    promisifyRequest<unknown>(store.get(keyOf(part))),
    promisifyRequest<unknown[]>(store.getAll(keysUnder(chainPrefix(part.id)))),
  ]);
  const there = [own, ...chain].flatMap((stored) => {
    const read = readStored(stored);
    return read.ok ? read.record : [];
  });
  return isSame(lastChanges(there), lastChanges([part, ...links]));
}

/** When each record was last changed, by its key. */
function lastChanges(records: readonly StoredRecord[]): Readonly<Record<string, string>> {
  return Object.fromEntries(records.map((record) => [keyOf(record), record.changed]));
}

const comparator = fields({
  ...{ at: moment, inspection: text, kind: oneOf(['zero', 'lean']) },
  ...{ name: text, title: text, value: number, expanded: number },
});

/** Infinite where the doubt is known for certain. */
const degrees = (value: unknown) => typeof value === 'number' && value >= 1;

const pass = fields({
  ...{ amount: number, wedge: number, standard: number, degreesOfFreedom: degrees },
  work: fields(
    {
      ...{ id: text, part: text, made: moment, method: oneOf(WORK_METHODS) },
      abrasive: text,
      amount: fields({ text, unit: oneOf(['seconds', 'strokes']) }),
    },
    { notLearned: fields({ at: moment }) },
  ),
});

const isFound = fields({
  part: text,
  at: moment,
  comparators: list(comparator),
  passes: list(pass),
});
