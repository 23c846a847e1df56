import { signal } from '@preact/signals';
import { defaultKit } from '../entry/kit-entry';
import type { NewId } from '../entry/new-id';
import { keyOf } from '../store/keys';
import { FORMAT, type PartRecord, type ShopRecord, type StoredRecord } from '../store/records';
import type { Unread } from '../store/shop-store';
import { onArrival, onDeparture } from './agreed';
import './arithmetic/arithmetic';
import { keep } from './saving';
import { forgetSummaries, showSummaries, unsettled } from './summaries';

/** Ids and times come from the browser here and nowhere else. */
export const newId: NewId = () => crypto.randomUUID();
export const now = (): string => new Date().toISOString();

/** What every new record begins with. */
export function newRecord() {
  const made = now();
  return { format: FORMAT, made, changed: made } as const;
}

/** Now, or just after `last` where the clock has been set back since: what comes later is told as later. */
export function nowAfter(last: string): string {
  const at = now();
  return at >= last ? at : new Date(Date.parse(last) + 1).toISOString();
}

/** The record as changed at this moment: each change is to be put through here before it is kept. */
export function changedNow<R extends StoredRecord>(record: R): R {
  return { ...record, changed: nowAfter(record.changed) };
}

/** Whether the database has answered yet. */
export const loading = signal<'waiting' | 'ready' | 'failed'>('waiting');

/** What could not be read and was left as it is. */
export const unread = signal<readonly Unread[]>([]);

/** Tells what could not be read, once. */
export function tellUnread(more: readonly Unread[]): void {
  if (more.length === 0) return;
  unread.value = [...new Map([...unread.value, ...more].map((one) => [one.key, one])).values()];
}

/** All parts by id, newest change last. */
export const parts = signal<ReadonlyMap<string, PartRecord>>(new Map());

/** What holds for all of the shop. */
export const shop = signal<ShopRecord>({
  ...newRecord(),
  kind: 'shop',
  kit: defaultKit(),
  units: { size: 'mm', deviation: 'µm' },
  level: '95',
});

onArrival((records) => {
  showSummaries(records.filter((record) => record.kind === 'summary'));
  const arrived = records.filter((record) => record.kind === 'part');
  if (arrived.length > 0) {
    parts.value = new Map([...parts.value, ...arrived.map((part) => [part.id, part] as const)]);
  }
  for (const record of records) if (record.kind === 'shop') shop.value = record;
});

onDeparture((gone) => {
  parts.value = new Map([...parts.value].filter(([, part]) => !gone.has(keyOf(part))));
  forgetSummaries(gone);
});

/** The part as it is by now: a screen may still show what it was a moment ago. */
export function partAsItIs(part: PartRecord): PartRecord {
  return parts.peek().get(part.id) ?? part;
}

export function putPart(part: PartRecord): void {
  const changed = changedNow(part);
  const isSameDrawing = parts.value.get(part.id)?.entry === part.entry;
  keep([changed, ...(isSameDrawing ? [] : unsettled(part.id, newRecord()))]);
  parts.value = new Map(parts.value).set(part.id, changed);
}

/** True where the stored record of the shop is of a newer version: it must not be overwritten. */
let shopIsNewer = false;

/** Lets the stored record of the shop be as it is where it is of a newer version. */
export function leaveStoredShop(isNewer: boolean): void {
  shopIsNewer = isNewer;
}

/** Changes what holds for the shop. */
export function putShop(
  changed: Partial<Omit<ShopRecord, 'kind' | 'format' | 'made' | 'changed'>>,
): void {
  const record = changedNow({ ...shop.value, ...changed });
  if (!shopIsNewer) keep([record]);
  shop.value = record;
}
