import { signal } from '@preact/signals';
import type { StoredRecord } from '../store/records';
import { save } from '../store/shop-store';

/** How the last writes went: the screens show anything but 'saved'. */
export type SavingState = 'saved' | 'saving' | 'not saved';

export const savingState = signal<SavingState>('saved');

let pending = 0;
let failed = false;

/**
 * Begins to write the records, at once and before anything else is done with them. The database
 * keeps the order of writes. What could not be written is told, and told again until a write works.
 */
export function keep(records: readonly StoredRecord[]): void {
  pending += 1;
  show();
  save(records).then(
    () => settle(false),
    (error: unknown) => {
      console.error(error);
      settle(true);
    },
  );
}

function settle(didFail: boolean): void {
  pending -= 1;
  failed = didFail;
  show();
}

function show(): void {
  savingState.value = failed ? 'not saved' : pending > 0 ? 'saving' : 'saved';
}
