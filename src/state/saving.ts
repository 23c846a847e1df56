import { signal } from '@preact/signals';
import { bringBack } from '../store/bring-back';
import { leftBehind, takeDown } from '../store/journal';
import { keyOf } from '../store/keys';
import { tellOtherWindows } from '../store/other-windows';
import type { StoredRecord } from '../store/records';
import { type Refusal, refusalOf } from '../store/storage-error';
import { type Written, write } from '../store/write';
import { agreedBeside, agreedOn, agreeOn, arrive } from './agreed';

/** How the last writes went: the screens show anything but 'saved'. */
export type SavingState = 'saved' | 'saving' | 'not saved';

export const savingState = signal<SavingState>('saved');

/** Why the last write did not work; none where it did. */
export const refusal = signal<Refusal | undefined>(undefined);

/** True once something had to give way to what another window had made of it. */
export const gaveWay = signal(false);

/** Records that are written in one transaction, all or none. */
type Group = readonly StoredRecord[];

/** The group that is being written, and those that wait for it. */
let underWay: Group | undefined;
let waiting: Group[] = [];

/** Groups that could not be written: tried again after a while, and once a write of anything else has worked. */
let refused: Group[] = [];

/** Keys of the records whose last write failed, until one works. */
const failing = new Set<string>();

/** ms until what the database refused is tried again. */
export const TRY_AGAIN = 3000;

/** ms after which a database that does not answer is told. */
const LONG = 5000;

/** True while a write takes longer than that. */
let isOverdue = false;

/**
 * Keeps the records, at once and before anything else is done with them: they are taken down, and
 * written as soon as the write before is done. While that takes its time a newer state of the same
 * records takes the place of the older. What could not be written is told until it is.
 */
export function keep(records: Group): void {
  waiting = [...without(waiting, records), records];
  refused = withNewer(without(refused, records), records);
  noteDown();
  next();
}

/** Everything that is not known to be on the disk, the newest state last. */
export function unsaved(): readonly StoredRecord[] {
  return [...refused, ...(underWay === undefined ? [] : [underWay]), ...waiting].flat();
}

/** Waits for what is on its way to the disk: a file of all that is stored would lack it. */
export async function untilSaved(): Promise<void> {
  for (let turn = 0; turn < 100 && unsaved().length > 0; turn += 1) {
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

function noteDown(): void {
  takeDown(unsaved().map((record) => ({ record, from: agreedOn(keyOf(record))?.changed })));
}

let bringing: Promise<void> | undefined;

/**
 * Brings to the disk, once, what an earlier page had not, such as one that was closed while somebody
 * typed. Nothing is read before that.
 */
export function keepLeftBehind(): Promise<void> {
  bringing ??= bring().catch((error: unknown) => {
    console.error(error);
    // Still taken down: whoever reads next tries again.
    bringing = undefined;
  });
  return bringing;
}

async function bring(): Promise<void> {
  const { unwritten, forget } = await leftBehind();
  const brought = await bringBack(unwritten);
  await forget();
  // The journal is opened with the page, so that it is there for the first keystroke.
  noteDown();
  if (brought.length > 0) tellOtherWindows(brought);
}

function next(): void {
  const [group, ...others] = waiting;
  if (underWay !== undefined || group === undefined) {
    show();
    return;
  }
  underWay = group;
  waiting = others;
  const overdue = setTimeout(() => {
    isOverdue = true;
    show();
  }, LONG);
  afterThisTurn(() => write(group, agreedOn)).then(
    (written) => {
      clearTimeout(overdue);
      settle(group, written);
    },
    (error: unknown) => {
      clearTimeout(overdue);
      console.error(error);
      refusal.value = refusalOf(error);
      settle(group, undefined);
    },
  );
  show();
}

/** What was taken down is safe already: the disk need not keep the answer to a keystroke waiting. */
function afterThisTurn<T>(work: () => Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    setTimeout(() => work().then(resolve, reject));
  });
}

/** `written` is undefined where the group was refused. */
function settle(group: Group, written: Written | undefined): void {
  underWay = undefined;
  isOverdue = false;
  if (written === undefined) refuse(group);
  else takeUp(group, written);
  noteDown();
  next();
}

function refuse(group: Group): void {
  for (const record of group) failing.add(keyOf(record));
  // A newer state of it on its way has the last word.
  if (without([group], waiting.flat()).length === 0) return;
  refused = [...refused, ...withNewer([group], waiting.flat())];
  clearTimeout(trying);
  trying = setTimeout(tryAgain, TRY_AGAIN);
}

let trying: ReturnType<typeof setTimeout> | undefined;

function tryAgain(): void {
  waiting = [...refused, ...waiting];
  refused = [];
  next();
}

/** The page now goes on from what lies on the disk, unless it has gone on already. */
function takeUp(group: Group, { records, overruled, erased }: Written): void {
  refusal.value = undefined;
  gaveWay.value ||= overruled.length > 0;
  for (const record of group) {
    failing.delete(keyOf(record));
    agreeOn(record);
  }
  tryAgain();
  const pending = new Set(unsaved().map(keyOf));
  const changed = records.filter((record, index) => record !== group[index]);
  arrive([...changed.filter((record) => !pending.has(keyOf(record))), ...overruled]);
  tellOtherWindows([...group, ...overruled].map(keyOf));
  for (const record of erased) keepRest(record, group);
}

/**
 * What was typed into a part that was erased meanwhile, by another window or by the browser, would be
 * seen by nobody without the part: the rest of it is kept again, as this page holds it.
 */
function keepRest(record: StoredRecord, group: Group): void {
  const known = new Set([...group, ...unsaved()].map(keyOf));
  const rest = agreedBeside(record).filter((one) => !known.has(keyOf(one)));
  if (rest.length > 0) keep(rest);
}

/**
 * Records that were just read, as the page is to hold them from now on: where it has made more of one
 * and not yet stored that, it stands in its place. `belongs` tells which others would have been read.
 */
export function held<R extends StoredRecord>(
  read: readonly R[],
  belongs: (record: StoredRecord) => record is R,
): readonly R[] {
  const pending = new Map(
    unsaved()
      .filter(belongs)
      .map((record) => [keyOf(record), record]),
  );
  for (const record of read) if (!pending.has(keyOf(record))) agreeOn(record);
  const byKey = new Map(read.map((record) => [keyOf(record), record]));
  return [...new Map([...byKey, ...pending]).values()];
}

/** The groups but for those whose records are all among the newer ones. */
function without(groups: readonly Group[], newer: Group): Group[] {
  const keys = new Set(newer.map(keyOf));
  return groups.filter((group) => !group.every((record) => keys.has(keyOf(record))));
}

/**
 * The groups with the newer states of what is in them: what is written later must not put an older
 * state of a record in the place of one that was written meanwhile.
 */
function withNewer(groups: readonly Group[], newer: Group): Group[] {
  const byKey = new Map(newer.map((record) => [keyOf(record), record]));
  return groups.map((group) => group.map((record) => byKey.get(keyOf(record)) ?? record));
}

function show(): void {
  if (isOverdue) refusal.value = 'silent';
  if (failing.size > 0 || isOverdue) savingState.value = 'not saved';
  else savingState.value = underWay === undefined ? 'saved' : 'saving';
}
