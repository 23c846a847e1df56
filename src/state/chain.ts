import { effect, signal } from '@preact/signals';
import type { Removal } from '../core/correction/removal';
import { METHOD } from '../core/inspection/method';
import type { SaidFinding } from '../core/inspection/said';
import { newSetup, readAgain } from '../entry/new-setup';
import { isUpright, type PairToRead, pairsToRead } from '../entry/pairs-to-read';
import type { PartEntry } from '../entry/part-entry';
import { readWithKit } from '../entry/read-with';
import type { SetupEntry, SetupKind } from '../entry/setup-entry';
import { chainPrefix, keyOf } from '../store/keys';
import type {
  InspectionRecord,
  PartRecord,
  StoredRecord,
  VersionRecord,
  WorkRecord,
} from '../store/records';
import { loadChain, loadVersions } from '../store/shop-store';
import { afterFrame } from './after-frame';
import { agreedOn, letGo, onArrival } from './agreed';
import { held, keep, keepLeftBehind, TRY_AGAIN, unsaved } from './saving';
import {
  changedNow,
  entryUnits,
  loading,
  newId,
  newRecord,
  now,
  parts,
  putPart,
  shop,
  tellUnread,
} from './shop';
import { unsettled } from './summaries';
import { noteChange, noteConversion, withoutLastChange } from './undo';
import { showVersions, versionOf, versions } from './versions';

/** One link of a part's chain. */
export type Link = InspectionRecord | WorkRecord;

interface Chain {
  readonly part: string;
  readonly links: readonly Link[];
}

/** What happened to the part that is open, oldest first; undefined until the database has answered. */
export const chain = signal<Chain | undefined>(undefined);

/**
 * The chain as the screens draw it. What is typed into it follows once the frame of the keystroke is
 * on the screen: in that frame nothing is drawn but the answer in a line.
 */
export const drawnChain = signal(chain.value);

effect(() => {
  const now = chain.value;
  const drawn = drawnChain.peek();
  const draw = () => {
    drawnChain.value = now;
  };
  const isTyping = now !== undefined && drawn !== undefined && hasSameLinks(now, drawn);
  return isTyping ? afterFrame(draw) : draw();
});

function hasSameLinks(one: Chain, other: Chain): boolean {
  return (
    one.part === other.part &&
    one.links.length === other.links.length &&
    one.links.every(({ id }, index) => id === other.links[index]?.id)
  );
}

/** The part that was asked for last. */
let wanted: string | undefined;

/** Opens the chain of `part`, unless it is open already. */
export async function openChain(part: string): Promise<void> {
  wanted = part;
  if (chain.value?.part === part) return;
  const pending = new Set(unsaved().map(keyOf));
  letGo((chain.value?.links ?? []).filter((link) => !pending.has(keyOf(link))));
  chain.value = undefined;
  await keepLeftBehind();
  const both = await Promise.all([loadChain(part), loadVersions(part)]).catch((error: unknown) => {
    console.error(error);
    loading.value = 'failed';
  });
  if (both === undefined) return goOnWithoutDatabase(part);
  // Another part may have been asked for since, or this one opened by an earlier call.
  if (wanted !== part || chain.peek()?.part === part) return;
  const [loaded, earlier] = both;
  tellUnread([...loaded.unread, ...earlier.unread]);
  showVersions(held(earlier.records, (record) => isVersionIn(part, record)));
  const links = held(loaded.records, (record) => isLinkOf(part, record));
  chain.value = { part, links: [...links].sort((a, b) => a.made.localeCompare(b.made)) };
}

/** What has been begun in this window can be gone on with; what is on the disk is asked for again. */
function goOnWithoutDatabase(part: string): void {
  if (wanted !== part || chain.peek() !== undefined) return;
  const record = parts.peek().get(part);
  if (record !== undefined && agreedOn(keyOf(record)) === undefined) {
    chain.value = { part, links: held<Link>([], (link) => isLinkOf(part, link)) };
    return;
  }
  setTimeout(() => {
    if (wanted === part) void openChain(part);
  }, TRY_AGAIN);
}

/** Whether a record is a link of the chain of `part`. */
function isLinkOf(part: string, record: StoredRecord): record is Link {
  return (record.kind === 'inspection' || record.kind === 'work') && record.part === part;
}

function isVersionIn(part: string, record: StoredRecord): record is VersionRecord {
  return record.kind === 'version' && record.of.startsWith(chainPrefix(part));
}

onArrival((records) => {
  const part = chain.value?.part;
  if (part === undefined) return;
  const earlier = records.filter((record) => isVersionIn(part, record));
  if (earlier.length > 0) showVersions([...versions.value, ...earlier]);
  const arrived = records.filter((record) => isLinkOf(part, record));
  if (arrived.length > 0) showLinks(part, arrived);
});

function putLinks(part: string, links: readonly Link[]): void {
  const changed = links.map(changedNow);
  keep([...changed, ...unsettled(part, newRecord())]);
  showLinks(part, changed);
}

/** Puts `after` in the place of `before`, so that it can be taken back. */
function putChange(before: InspectionRecord, after: InspectionRecord): void {
  const changed = changedNow(after);
  noteChange(before, changed);
  putLinks(changed.part, [changed]);
}

function showLinks(part: string, changed: readonly Link[]): void {
  const links = chain.value?.part === part ? chain.value.links : [];
  const byId = new Map(links.map((link) => [link.id, link]));
  for (const link of changed) byId.set(link.id, link);
  chain.value = { part, links: [...byId.values()] };
}

/** Begins a new inspection: with the setups of the last one, to be read again, where there was one. */
export function beginInspection(part: string, entry: PartEntry): InspectionRecord {
  const last = latestInspection(chain.value?.links ?? []);
  const since = chain.value?.links.at(-1);
  const worked = since?.kind === 'work' ? since.face : undefined;
  const again = (last?.setups ?? [])
    .flatMap((setup) => readAgain(setup, newId, worked) ?? [])
    .map(withKitInUse);
  const inspection: InspectionRecord = {
    ...newRecord(),
    ...{ kind: 'inspection', id: newId(), part },
    setups: again.length > 0 ? again : firstSetups(entry),
  };
  putLinks(part, [inspection]);
  return asItIs(inspection);
}

/** Adds an inspection of what was read elsewhere. */
export function addInspection(part: string, setups: readonly SetupEntry[]): InspectionRecord {
  const inspection: InspectionRecord = {
    ...newRecord(),
    ...{ kind: 'inspection', id: newId(), part, setups },
  };
  putLinks(part, [inspection]);
  return asItIs(inspection);
}

/** A nose comparator on each upright pair that the drawing asks about. */
function firstSetups(entry: PartEntry): readonly SetupEntry[] {
  return pairsToRead(entry)
    .filter(isUpright)
    .map(({ faces, base }) => newSetup('nose comparator', faces, base, entryUnits.value, newId))
    .map(withKitInUse);
}

/** The setup to be read with what the kit in use has out of the drawer. */
function withKitInUse(setup: SetupEntry): SetupEntry {
  const { kit, drawer = [] } = shop.value;
  return readWithKit(setup, kit, drawer);
}

/** The inspection `id` of a chain, where it is there. */
export function inspectionIn(
  links: readonly Link[],
  id: string | undefined,
): InspectionRecord | undefined {
  return links.find(
    (link): link is InspectionRecord => link.kind === 'inspection' && link.id === id,
  );
}

export function latestInspection(links: readonly Link[]): InspectionRecord | undefined {
  return links.findLast((link): link is InspectionRecord => link.kind === 'inspection');
}

/** The inspection that came before another one of the same part. */
export function inspectionBefore(
  { id }: InspectionRecord,
  links: readonly Link[],
): InspectionRecord | undefined {
  return latestInspection(
    links.slice(
      0,
      links.findIndex((link) => link.id === id),
    ),
  );
}

/** The same inspection as it is by now: a screen may still show what it was a moment ago. */
function asItIs(inspection: InspectionRecord): InspectionRecord {
  return within(chain.peek(), inspection);
}

/** The same for a screen that is to follow each keystroke at once. */
export function followed(inspection: InspectionRecord): InspectionRecord {
  return within(chain.value, inspection);
}

function within(of: Chain | undefined, inspection: InspectionRecord): InspectionRecord {
  const { part, links } = of ?? {};
  const now = part === inspection.part && links?.find(({ id }) => id === inspection.id);
  return now && now.kind === 'inspection' ? now : inspection;
}

/** Changes what is read, from what it is by now. */
export function changeSetups(
  inspection: InspectionRecord,
  change: (setups: readonly SetupEntry[]) => readonly SetupEntry[],
): void {
  const now = asItIs(inspection);
  // A screen may not have drawn yet that they are finished.
  if (now.closed !== undefined) return;
  putChange(now, { ...now, setups: change(now.setups) });
}

/** Puts what is typed into other units: that is no change to take back, and what was before goes along. */
export function convertSetups(
  inspection: InspectionRecord,
  convert: (setups: readonly SetupEntry[]) => readonly SetupEntry[],
): void {
  const now = asItIs(inspection);
  if (now.closed !== undefined) return;
  const converted = { ...now, setups: convert(now.setups) };
  noteConversion(now, converted, convert);
  putLinks(now.part, [converted]);
}

/** Takes the last change at the plate back: what was typed, added, removed or left out. */
export function undo(inspection: InspectionRecord): void {
  const before = withoutLastChange(asItIs(inspection));
  if (before !== undefined) putLinks(before.part, [before]);
}

/** Changes one setup, from what it is by now; none where it has been taken away since. */
export function changeSetup<S extends SetupEntry>(
  inspection: InspectionRecord,
  { id, kind }: S,
  change: (setup: S) => S,
): void {
  changeSetups(inspection, (setups) =>
    // A setup keeps its kind for life, so what has this id and kind is an S.
    setups.map((setup) => (setup.id === id && setup.kind === kind ? change(setup as S) : setup)),
  );
}

/** Takes a reading out of the reckoning. What was typed stays, and so does the reason. */
export function leaveOut(inspection: InspectionRecord, reading: string, why: string): void {
  const current = asItIs(inspection);
  if (current.closed !== undefined) return;
  const leftOut = { ...current.leftOut, [reading]: { at: now(), why } };
  putChange(current, { ...current, leftOut });
}

/** Takes a reading back into the reckoning. */
export function putBack(inspection: InspectionRecord, reading: string): void {
  const current = asItIs(inspection);
  if (current.closed !== undefined) return;
  const { [reading]: _, ...leftOut } = current.leftOut ?? {};
  putChange(current, { ...current, leftOut });
}

/** Shows a guide or a reminder no more with this inspection. */
export function dismiss(inspection: InspectionRecord, what: string): void {
  const current = asItIs(inspection);
  if (current.closed !== undefined) return;
  putLinks(current.part, [{ ...current, dismissed: [...(current.dismissed ?? []), what] }]);
}

/** Adds a setup of each kind for a pair of faces, changed by `then` where it is given. */
export function addSetups(
  inspection: InspectionRecord,
  kinds: readonly SetupKind[],
  { faces, base }: PairToRead,
  then: (setup: SetupEntry) => SetupEntry = (setup) => setup,
): void {
  const added = kinds.map((kind) =>
    then(withKitInUse(newSetup(kind, faces, base, entryUnits.value, newId))),
  );
  changeSetups(inspection, (setups) => [...setups, ...added]);
}

/** Finishes the readings: from now on they are worked out with the part and the kit as they are now. */
export function closeInspection(inspection: InspectionRecord, part: PartEntry): void {
  putLinks(inspection.part, [{ ...asItIs(inspection), closed: finishedWith(part) }]);
}

/** What readings that are finished at this moment are worked out with, and by whom. */
function finishedWith(part: PartEntry): NonNullable<InspectionRecord['closed']> {
  const { kit, level } = shop.value;
  return { at: now(), part, kit, level, method: METHOD, ...byWhom() };
}

function byWhom(): { readonly who?: string } {
  const who = shop.value.who?.trim();
  return who ? { who } : {};
}

/** Keeps with finished readings what they say. */
export function putSaid(inspection: InspectionRecord, said: readonly SaidFinding[]): void {
  const current = asItIs(inspection);
  if (current.closed === undefined || current.closed.said !== undefined) return;
  putLinks(current.part, [{ ...current, closed: { ...current.closed, said } }]);
}

/** Closes the part: these readings are what it is let go with. They are finished by it, in one transaction. */
export function closePart(part: PartRecord, inspection: InspectionRecord): void {
  const current = asItIs(inspection);
  const finished = current.closed ?? finishedWith(part.entry);
  const closed: PartRecord = {
    ...part,
    closed: { at: now(), inspection: current.id, ...byWhom() },
  };
  putPartWith(closed, [{ ...current, closed: finished }]);
}

/** Takes a closed part up again. */
export function reopenPart({ closed: _, ...part }: PartRecord): void {
  putPart(part);
}

/** A part and links of its chain, kept all or none. */
function putPartWith(part: PartRecord, changed: readonly Link[]): void {
  const stamped = changedNow(part);
  const links = changed.map(changedNow);
  keep([stamped, ...links, ...unsettled(part.id, newRecord())]);
  parts.value = new Map(parts.value).set(part.id, stamped);
  showLinks(part.id, links);
}

/**
 * Opens finished readings again, to put a slip right: what they were finished with is kept as an
 * earlier version, with `why`, in the same transaction.
 */
export function reopenInspection(inspection: InspectionRecord, why: string): void {
  const finished = asItIs(inspection);
  if (finished.closed === undefined) return;
  const { closed: _, ...rest } = finished;
  const version = versionOf(finished, why);
  const open = changedNow<InspectionRecord>(rest);
  keep([version, open, ...unsettled(open.part, newRecord())]);
  showVersions([...versions.value, version]);
  showLinks(open.part, [open]);
}

/** Begins to log work on a face that follows `inspection`, which is finished by it, in one transaction. */
export function beginWork(
  inspection: InspectionRecord,
  part: PartEntry,
  { face, mean, slopes }: Removal,
): WorkRecord {
  const last = chain.value?.links.findLast((link): link is WorkRecord => link.kind === 'work');
  const work: WorkRecord = {
    ...newRecord(),
    ...{ kind: 'work', id: newId(), part: inspection.part },
    ...{ face, advised: { mean, slopes } },
    after: inspection.id,
    method: last?.method ?? 'lap',
    abrasive: last?.abrasive ?? '',
    amount: { text: '', unit: last?.amount.unit ?? 'seconds' },
    note: '',
  };
  const current = asItIs(inspection);
  const closed = current.closed ?? finishedWith(part);
  putLinks(current.part, [{ ...current, closed }, work]);
  return work;
}

export function putWork(work: WorkRecord): void {
  putLinks(work.part, [work]);
}
