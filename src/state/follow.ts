import { keyOf } from '../store/keys';
import { onToldByOthers } from '../store/other-windows';
import { readAt } from '../store/shop-store';
import { isSame } from '../store/three-way';
import { agreedKeys, agreedOn, arrive } from './agreed';
import { unsaved } from './saving';

/** Follows what other windows write from now on; a window that slept catches up when it is seen again. */
export function followOtherWindows(): void {
  onToldByOthers((keys) => void readAgain(keys));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void readAgain(agreedKeys());
  });
}

/** Takes in what now lies at `keys`, but for what this window has changed itself: its write puts both together. */
export async function readAgain(keys: readonly string[]): Promise<void> {
  const before = new Map(keys.map((key) => [key, agreedOn(key)]));
  const records = await readAt(keys).catch((error: unknown) => {
    // The database is told as dead where something is to be saved.
    console.error(error);
    return [];
  });
  const pending = new Set(unsaved().map(keyOf));
  arrive(
    records.filter((record) => {
      const key = keyOf(record);
      // What was written here in the meantime took the other window's state in.
      if (pending.has(key) || agreedOn(key) !== before.get(key)) return false;
      return !isSame(record, agreedOn(key));
    }),
  );
}
