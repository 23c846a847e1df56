import { computed, signal } from '@preact/signals';
import type { Kit } from '../core/readings/kit';
import { defaultKit, type KitEntry } from '../entry/kit-entry';
import { type MethodLimitsEntry, usualMethodLimits } from '../entry/method-limits';
import type { NewId } from '../entry/new-id';
import type { EntryUnits } from '../entry/new-setup';
import { readNumber } from '../entry/number';
import { readKit } from '../entry/read-kit';
import { keyOf } from '../store/keys';
import {
  FORMAT,
  type PartRecord,
  type ShopRecord,
  type ShopUnits,
  type StoredRecord,
} from '../store/records';
import { loadParts, loadShop, loadSummaries, type Unread } from '../store/shop-store';
import { agreeOn, onArrival, onDeparture } from './agreed';
import { oldestFirst } from './oldest-first';
import './arithmetic/arithmetic';
import { held, keep, keepLeftBehind, TRY_AGAIN } from './saving';
import { forgetSummaries, showSummaries, summaries, unsettled } from './summaries';

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

/** True where the stored record of the shop is of a newer version: it must not be overwritten. */
let shopIsNewer = false;

export const shop = signal<ShopRecord>({
  ...newRecord(),
  kind: 'shop',
  kit: defaultKit(),
  units: { size: 'mm', deviation: 'µm' },
  level: '95',
});

/** Units that new fields begin with. */
export const entryUnits = computed<EntryUnits>(() => ({
  size: shop.value.units.size,
  reading: shop.value.units.deviation,
}));

/** The kit as numbers, or undefined while a field of it is wrong. */
export const kit = computed<Kit | undefined>(() => readKit(shop.value.kit).kit);

/** Per cent that a verdict may be asked to be sure of; below, in and out would hardly differ. */
export const LEVEL_RANGE = { least: 60, most: 99.9 } as const;

/** The least probability for a verdict, or undefined while what is typed is no such number. */
export function readLevel(text: string): number | undefined {
  const read = readNumber(text);
  if (!read.ok || read.value < LEVEL_RANGE.least || read.value > LEVEL_RANGE.most) return undefined;
  return read.value / 100;
}

export const level = computed<number | undefined>(() => readLevel(shop.value.level));

/** Reads the shop and the parts from the database. */
export async function openShop(): Promise<void> {
  try {
    await keepLeftBehind();
    const [stored, loaded, summed] = await Promise.all([loadShop(), loadParts(), loadSummaries()]);
    // What has been unsettled before the database answered stays so.
    for (const summary of summed.records) agreeOn(summary);
    showSummaries(summed.records.filter(({ part }) => !summaries.peek().has(part)));
    const [own] = held(stored.records, (record) => record.kind === 'shop');
    if (own !== undefined) shop.value = own;
    shopIsNewer = stored.unread.some(({ reason }) => reason === 'newer');
    // A part begun before the database answered must not be lost from the list.
    const before = parts.value;
    const others = loaded.records.filter(({ id }) => !before.has(id));
    const all = held(
      others,
      (record): record is PartRecord => record.kind === 'part' && !before.has(record.id),
    );
    const byAge = oldestFirst(all);
    parts.value = new Map([...byAge.map((part) => [part.id, part] as const), ...before]);
    tellUnread([...stored.unread, ...loaded.unread]);
    loading.value = 'ready';
  } catch (error) {
    console.error(error);
    loading.value = 'failed';
    setTimeout(() => void openShop(), TRY_AGAIN);
  }
}

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

/** Changes what holds for the shop. */
export function putShop(
  changed: Partial<Omit<ShopRecord, 'kind' | 'format' | 'made' | 'changed'>>,
): void {
  const record = changedNow({ ...shop.value, ...changed });
  if (!shopIsNewer) keep([record]);
  shop.value = record;
}

export function setKit(entry: KitEntry): void {
  putShop({ kit: entry });
}

/** What the kit in use is called. */
export const kitName = computed(() => shop.value.kitName ?? FIRST_KIT);

const FIRST_KIT = 'Kit 1';

export function setKitName(name: string): void {
  putShop({ kitName: name });
}

/** Lays the kit in use into the drawer and goes on with a copy of it under a name of its own. */
export function addKit(): void {
  const { kit: inUse, otherKits = [] } = shop.value;
  const drawer = [...otherKits, { name: kitName.value, kit: inUse }];
  putShop({ otherKits: drawer, kitName: `Kit ${drawer.length + 1}` });
}

/** Takes a kit out of the drawer and lays the one in use into it. */
export function takeKit(index: number): void {
  const { kit: inUse, otherKits = [] } = shop.value;
  const taken = otherKits[index];
  if (taken === undefined) throw new RangeError('There is no such kit in the drawer');
  const drawer = otherKits.map((other, place) =>
    place === index ? { name: kitName.value, kit: inUse } : other,
  );
  putShop({ kit: taken.kit, kitName: taken.name, otherKits: drawer });
}

export function setUnits(units: ShopUnits): void {
  putShop({ units });
}

/** Who measures; empty where nobody is named. */
export const who = computed(() => shop.value.who ?? '');

export function setWho(name: string): void {
  putShop({ who: name });
}

export function setLevel(text: string): void {
  putShop({ level: text });
}

/** How much of each tolerance a plan may leave, in per cent, as typed. */
export function setShare(text: string): void {
  putShop({ share: text });
}

/** Where the shop draws the lines between lapping, grinding and machining. */
export const methodLimits = computed<MethodLimitsEntry>(
  () => shop.value.methodLimits ?? usualMethodLimits(),
);

export function setMethodLimits(entry: MethodLimitsEntry): void {
  putShop({ methodLimits: entry });
}

/** Lets the rate of a way of working be learned from what is yet to come after `last`, its last pass. */
export function learnAnew(way: string, last = ''): void {
  putShop({ learnedSince: { ...shop.value.learnedSince, [way]: nowAfter(last) } });
}

/** Lets what came before count again. */
export function takeBackLearningAnew(way: string): void {
  const { [way]: _, ...others } = shop.value.learnedSince ?? {};
  putShop({ learnedSince: others });
}

/** Lets a new run begin for a comparator after `last`, its last check: it was set anew. */
export function setAnew(comparator: string, last = ''): void {
  const before = shop.value.setAnew ?? {};
  const times = [...(before[comparator] ?? []), nowAfter(last)];
  putShop({ setAnew: { ...before, [comparator]: times } });
}

/** Takes back that it was set anew the last time. */
export function takeBackSetAnew(comparator: string): void {
  const { [comparator]: times = [], ...others } = shop.value.setAnew ?? {};
  const rest = times.slice(0, -1);
  putShop({ setAnew: rest.length === 0 ? others : { ...others, [comparator]: rest } });
}
