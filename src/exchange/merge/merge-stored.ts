import { changeLineages, readLineages } from '../../store/in-bulk';
import { SUMMARY_PREFIX } from '../../store/keys';
import type { StoredLineage } from '../../store/lineages-at';
import { noteOf } from '../../store/merged-states';
import type { StoredRecord } from '../../store/records';
import { isSame } from '../../store/three-way';
import { readStored } from '../../store/whole/read-stored';
import type { KeptRecord } from '../shape/records';
import { lineagesOf, recordsOf } from './lineages';
import type { Outcome } from './tally';
import { type Lineage, unite } from './unite';

/** One record's merge: what is to be written and erased, and what it comes to. */
interface Step {
  readonly put: readonly KeptRecord[];
  readonly erase: readonly string[];
  readonly outcome: Outcome;
}

/** What merging `records` into the store would come to, record by record. */
export async function outcomesOf(records: readonly KeptRecord[]): Promise<readonly Outcome[]> {
  const incoming = lineagesOf(records);
  const stored = await readLineages([...incoming.keys()]);
  return stored.map((one) => {
    const lineage = incoming.get(one.key) ?? { versions: [] };
    return stepOf(one, (here) => unite(here, lineage), lineage).outcome;
  });
}

/** Merges `records` into the store, in one transaction. */
export function mergeStored(records: readonly KeptRecord[]): Promise<readonly Outcome[]> {
  const incoming = lineagesOf(records);
  const united = [...incoming].map(([key, lineage]) => {
    return [key, (here: Lineage) => unite(here, lineage)] as const;
  });
  return changeStored(new Map(united), incoming);
}

/** What is to become of one record and its earlier states. */
export type Become = (here: Lineage) => Lineage;

/** Makes of the records at the keys what is to become of them, in one transaction. */
export async function changeStored(
  become: ReadonlyMap<string, Become>,
  incoming: ReadonlyMap<string, Lineage> = new Map(),
): Promise<readonly Outcome[]> {
  let steps: readonly Step[] = [];
  await changeLineages([...become.keys()], (stored) => {
    steps = stored.map((one) => stepOf(one, become.get(one.key), incoming.get(one.key)));
    const put = steps.flatMap((step) => step.put);
    return {
      put,
      erase: steps.flatMap((step) => [...step.erase, ...summariesOf(step.put)]),
      // A merge is noted so that it can be told from what is entered after it.
      noted: incoming.size === 0 ? undefined : noteOf(put.filter((one) => one.kind !== 'version')),
    };
  });
  return steps.map(({ outcome }) => outcome);
}

function stepOf(
  stored: StoredLineage,
  become: Become = (here) => here,
  incoming: Lineage = { versions: [] },
): Step {
  const current = stored.current === undefined ? undefined : readable(stored.current);
  const versions = stored.versions.map(readable);
  if (current === null || versions.includes(null)) {
    return { put: [], erase: [], outcome: 'untouched' };
  }
  const here = { current, versions } as Lineage;
  const [before, after] = [recordsOf(here), recordsOf(become(here))];
  const put = [...after].filter(([key, record]) => !isSame(before.get(key), record));
  return {
    put: put.map(([, record]) => record),
    erase: [...before.keys()].filter((key) => !after.has(key)),
    outcome: put.length === 0 ? 'same' : outcomeOf(here, incoming, after.get(stored.key)),
  };
}

function outcomeOf(here: Lineage, file: Lineage, current: KeptRecord | undefined): Outcome {
  if (here.current === undefined) return file.current?.kind ?? 'moreVersions';
  if (!isSame(here.current, current)) return 'laterInFile';
  return file.current === undefined || isSame(here.current, file.current)
    ? 'moreVersions'
    : 'laterHere';
}

/** A stored value as a record of today's format; null where it is none. */
function readable(stored: unknown): StoredRecord | null {
  const upgraded = readStored(stored);
  return upgraded.ok ? upgraded.record : null;
}

/** Keys of what was worked out from the records: it is to be worked out again. */
function summariesOf(records: readonly KeptRecord[]): readonly string[] {
  const states = records.map((record) => (record.kind === 'version' ? record.record : record));
  return states.flatMap((state) => {
    if (state.kind === 'shop') return [];
    return [`${SUMMARY_PREFIX}${state.kind === 'part' ? state.id : state.part}`];
  });
}
