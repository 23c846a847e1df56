import { groupedBy } from '../core/grouped-by';
import { blankPart } from '../entry/part-entry';
import { writeBackup } from '../exchange/backup/write-backup';
import { matchHeading } from '../exchange/csv/columns';
import { MOST_ROWS, pickInspections } from '../exchange/csv/long-table';
import { readReadings } from '../exchange/csv/read-readings';
import type { InspectionInTable } from '../exchange/csv/table-kind';
import type { InspectionRecord, PartRecord } from '../store/records';
import { loadChain } from '../store/shop-store';
import type { OpenedTable } from './opened-table';
import { untilSaved } from './saving';
import { newId, newRecord, now, parts, shop } from './shop';
import { reasonsAt } from './tables';
import { turns } from './turns';

/*
 * All inspections of a table at once, for a shop that moves over. They are made into a backup of what is new
 * in them and merged as one, so that all is kept as it was before and can be put back.
 */

/** What becomes of the inspections of a table. */
export interface TablePlan {
  /** Each with the part that it goes to, one that is here or a new one. */
  readonly taken: readonly { readonly inspection: InspectionInTable; readonly part: PartRecord }[];
  /** How many of these parts are new here. */
  readonly newParts: number;
  /** Those of a part that has an inspection of the same time already. */
  readonly here: readonly InspectionInTable[];
  /** Those whose part or time is not told for certain, and those longer than any: somebody has to see to them. */
  readonly unclear: readonly InspectionInTable[];
}

/** ISO 8601, as the column has it: of a time written otherwise it is not sure which is the day. */
const ISO = /^\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)?)?$/;

/** When an inspection was taken, in UTC; undefined where that is not told, or yet to come. */
function madeAt({ taken }: InspectionInTable): string | undefined {
  const time = ISO.test(taken) ? Date.parse(taken) : Number.NaN;
  if (Number.isNaN(time)) return undefined;
  const made = new Date(time).toISOString();
  return made <= now() ? made : undefined;
}

/** What taking the whole table in would do. */
export async function planWhole({ contents }: OpenedTable): Promise<TablePlan> {
  await untilSaved();
  const turn = turns();
  const taken: TablePlan['taken'][number][] = [];
  const here: InspectionInTable[] = [];
  const unclear: InspectionInTable[] = [];
  const known = partsByName();
  const begun = new Map<string, PartRecord>();
  const made = new Map<string, ReadonlySet<string>>();
  for (const inspection of contents?.inspections ?? []) {
    await turn();
    const name = nameOf(inspection.part, inspection.job);
    const [part = begun.get(name) ?? newPart(inspection), ...others] = known.get(name) ?? [];
    const at = madeAt(inspection);
    if (inspection.part === '' || others.length > 0 || at === undefined || isTooLong(inspection)) {
      unclear.push(inspection);
      continue;
    }
    if (!known.has(name)) begun.set(name, part);
    else if (!made.has(part.id)) made.set(part.id, await timesOf(part));
    if (made.get(part.id)?.has(at)) here.push(inspection);
    else taken.push({ inspection, part });
  }
  return { taken, newParts: begun.size, here, unclear };
}

function isTooLong({ count }: InspectionInTable): boolean {
  return count > MOST_ROWS;
}

function nameOf(name: string, job: string): string {
  return JSON.stringify([name.trim(), job.trim()]);
}

/** Parts that readings can go to, by name and job: not the invented one, and none that was removed. */
function partsByName(): ReadonlyMap<string, readonly PartRecord[]> {
  const all = [...parts.peek().values()];
  const own = all.filter(({ example, removed }) => !example && removed === undefined);
  return groupedBy(own, ({ entry }) => nameOf(entry.name, entry.job));
}

/** A part of which no more is known than what the table calls it. */
function newPart({ part: name, job }: InspectionInTable): PartRecord {
  const entry = { ...blankPart(shop.peek().units.size), name, job };
  return { ...newRecord(), kind: 'part', id: newId(), example: false, entry };
}

/** When the inspections of a part were begun. */
async function timesOf({ id }: PartRecord): Promise<ReadonlySet<string>> {
  const { records } = await loadChain(id);
  return new Set(records.flatMap(({ kind, made }) => (kind === 'inspection' ? [made] : [])));
}

/**
 * The whole table as a backup of what is new in it, which is called as the table is. Rows that cannot be
 * taken stay out.
 *
 * @throws FileRefused where a column in it has more heights and placings than any.
 */
export async function wholeTableAsBackup(table: OpenedTable): Promise<File> {
  const { taken } = await planWhole(table);
  const asked = taken.map(({ inspection }) => inspection);
  const turn = turns();
  const { head, rows } = await pickInspections(table.text, asked, turn);
  const columns = head.cells.map(matchHeading);
  const records = new Map<string, PartRecord | InspectionRecord>();
  for (const { inspection, part } of taken) {
    await turn();
    const { setups, leftOut, count } = readReadings(rows.get(inspection) ?? [], columns, newId);
    const made = madeAt(inspection);
    if (count === 0 || made === undefined) continue;
    if (!parts.peek().has(part.id)) records.set(part.id, part);
    const id = newId();
    records.set(id, {
      ...{ ...newRecord(), made, kind: 'inspection', id, part: part.id, setups },
      ...(leftOut.size > 0 && { leftOut: reasonsAt(now(), leftOut) }),
    });
  }
  const backup = await writeBackup({ made: now(), app: __APP_VERSION__ }, inGroups(records));
  return new File([backup], table.name, { type: 'application/gzip' });
}

async function* inGroups(records: ReadonlyMap<string, unknown>) {
  yield [...records.values()];
}
