import { effect, signal } from '@preact/signals';
import type { Face } from '../core/part/faces';
import { chainPrefix, keyOf } from '../store/keys';
import type { InspectionRecord, StoredRecord, VersionRecord, WorkRecord } from '../store/records';
import { loadChain, loadVersions } from '../store/shop-store';
import { afterFrame } from './after-frame';
import { agreedOn, letGo, onArrival, onDeparture } from './agreed';
import { lastBegunAnew } from './begun-anew';
import { oldestFirst } from './oldest-first';
import { held, keep, keepLeftBehind, TRY_AGAIN, unsaved } from './saving';
import { changedNow, loading, newRecord, nowAfter, parts, tellUnread } from './shop';
import { unsettled } from './summaries';
import { showVersions, versions } from './versions';

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
  chain.value = { part, links: oldestFirst(links) };
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
  if (arrived.length === 0) return;
  showLinks(part, arrived);
  // A merge brings what was read before what is here.
  chain.value = { part, links: oldestFirst(chain.value?.links ?? []) };
});

onDeparture((gone) => {
  if (chain.value === undefined) return;
  const { part, links } = chain.value;
  chain.value = { part, links: links.filter((link) => !gone.has(keyOf(link))) };
});

/**
 * What a new link of the chain of `part` begins with: made after the last one, and after whatever was begun
 * anew, so that it counts, also where the clock has been set back.
 */
export function newLink(part: string): ReturnType<typeof newRecord> {
  const base = newRecord();
  const last = chain.peek()?.part === part ? chain.peek()?.links.at(-1) : undefined;
  const made = nowAfter([last?.made ?? '', lastBegunAnew()].sort()[1] ?? '');
  return { ...base, made, changed: made };
}

export function putLinks(part: string, links: readonly Link[]): void {
  const changed = links.map(changedNow);
  keep([...changed, ...unsettled(part, newRecord())]);
  showLinks(part, changed);
}

export function showLinks(part: string, changed: readonly Link[]): void {
  const links = chain.value?.part === part ? chain.value.links : [];
  const byId = new Map(links.map((link) => [link.id, link]));
  for (const link of changed) byId.set(link.id, link);
  chain.value = { part, links: [...byId.values()] };
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

/** The faces that were worked between two inspections of a part. */
export function facesWorked(
  one: InspectionRecord,
  next: InspectionRecord,
  links: readonly Link[],
): readonly Face[] {
  const [from, to] = [one, next].map(({ id }) => links.findIndex((link) => link.id === id));
  return links.slice(from, to).flatMap((link) => (link.kind === 'work' ? link.face : []));
}

/** The same link as it is by now: a screen may still show what it was a moment ago. */
export function asItIs<L extends Link>(link: L): L {
  return within(chain.peek(), link);
}

/** The same for a screen that is to follow each keystroke at once. */
export function followed(inspection: InspectionRecord): InspectionRecord {
  return within(chain.value, inspection);
}

function within<L extends Link>(of: Chain | undefined, link: L): L {
  if (of?.part !== link.part) return link;
  const isSame = (other: Link): other is L => other.id === link.id && other.kind === link.kind;
  return of.links.find(isSame) ?? link;
}
