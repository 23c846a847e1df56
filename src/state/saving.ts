import { signal } from '@preact/signals';
import { forgetLeftBehind, leftBehind, takeDown } from '../store/journal';
import { keyOf } from '../store/keys';
import type { StoredRecord } from '../store/records';
import { save } from '../store/shop-store';
import { upgrade } from '../store/upgrades';

/** How the last writes went: the screens show anything but 'saved'. */
export type SavingState = 'saved' | 'saving' | 'not saved';

export const savingState = signal<SavingState>('saved');

/** Records that are written in one transaction, all or none. */
type Group = readonly StoredRecord[];

/** The group that is being written, and those that wait for it. */
let underWay: Group | undefined;
let waiting: Group[] = [];

/** Groups that could not be written: tried again once a write of anything else has worked. */
let refused: Group[] = [];

/** Keys of the records whose last write failed, until one works. */
const failing = new Set<string>();

/**
 * Keeps the records, at once and before anything else is done with them: they are taken down, and
 * written as soon as the write before is done. While that takes its time a newer state of the same
 * records takes the place of the older. What could not be written is told until it is.
 */
export function keep(records: Group): void {
  waiting = [...without(waiting, records), records];
  refused = without(refused, records);
  takeDown(unsaved());
  next();
}

let bringing: Promise<void> | undefined;

/**
 * Brings to the disk, once, what an earlier page had not, such as one that was closed while somebody
 * typed. Nothing is read before that.
 */
export function keepLeftBehind(): Promise<void> {
  bringing ??= bring().catch((error: unknown) => console.error(error));
  return bringing;
}

async function bring(): Promise<void> {
  const records = leftBehind().flatMap((stored) => {
    const upgraded = upgrade(stored);
    return upgraded.ok ? [upgraded.record] : [];
  });
  if (records.length > 0) await save(records);
  forgetLeftBehind();
}

function next(): void {
  const [group, ...others] = waiting;
  if (underWay !== undefined || group === undefined) {
    show();
    return;
  }
  underWay = group;
  waiting = others;
  afterThisTurn(() => save(group)).then(
    () => settle(true),
    (error: unknown) => {
      console.error(error);
      settle(false);
    },
  );
  show();
}

/** What was taken down is safe already: the disk need not keep the answer to a keystroke waiting. */
function afterThisTurn(work: () => Promise<void>): Promise<void> {
  return new Promise((resolve, reject) => {
    setTimeout(() => work().then(resolve, reject));
  });
}

function settle(kept: boolean): void {
  const group = underWay ?? [];
  underWay = undefined;
  for (const record of group) {
    if (kept) failing.delete(keyOf(record));
    else failing.add(keyOf(record));
  }
  if (kept) {
    waiting = [...refused, ...waiting];
    refused = [];
  } else if (without([group], waiting.flat()).length > 0) {
    // A newer state of it on its way has the last word.
    refused = [...refused, group];
  }
  takeDown(unsaved());
  next();
}

/** Everything that is not known to be on the disk, the newest state last. */
function unsaved(): readonly StoredRecord[] {
  return [...refused, ...(underWay === undefined ? [] : [underWay]), ...waiting].flat();
}

/** The groups but for those whose records are all among the newer ones. */
function without(groups: readonly Group[], newer: Group): Group[] {
  const keys = new Set(newer.map(keyOf));
  return groups.filter((group) => !group.every((record) => keys.has(keyOf(record))));
}

function show(): void {
  if (failing.size > 0) savingState.value = 'not saved';
  else savingState.value = underWay === undefined ? 'saved' : 'saving';
}
