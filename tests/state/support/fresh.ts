import { vi } from 'vitest';
import { chain } from '../../../src/state/chain';
import { type SavingState, savingState } from '../../../src/state/saving';
import { loading, parts, shop, unread } from '../../../src/state/shop';
import { emptyDatabase } from '../../store/support/database';

const FIRST_SHOP = shop.value;

/** The app as it starts on a device that has never seen it, at the time that the samples are of. */
export async function startAfresh(): Promise<void> {
  // What the test before left behind is not to come into this one.
  await saving('saved');
  vi.useFakeTimers({ now: new Date('2024-03-05T14:07:00.000Z'), toFake: ['Date'] });
  await emptyDatabase();
  chain.value = undefined;
  parts.value = new Map();
  shop.value = FIRST_SHOP;
  unread.value = [];
  loading.value = 'waiting';
}

/** Waits until the saving has come to `state`. */
export function saving(state: SavingState): Promise<void> {
  return new Promise((resolve) => {
    const stop = savingState.subscribe((now) => {
      if (now !== state) return;
      resolve();
      queueMicrotask(() => stop());
    });
  });
}
