import { keyOf } from '../store/keys';
import { onToldByOthers, type Told } from '../store/other-windows';
import { loadChain, loadVersions, lookAt } from '../store/shop-store';
import { isSame } from '../store/three-way';
import { agreedKeys, agreedOn, arrive, depart } from './agreed';
import { chain } from './chain';
import { openShop } from './open-shop';
import { unsaved } from './saving';

/** Follows what other windows write from now on; a window that slept catches up when it is seen again. */
export function followOtherWindows(): void {
  onToldByOthers((told) => void followTold(told));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void allKeys().then(readAgain);
  });
}

async function followTold(told: Told): Promise<void> {
  depart(await takeIn(told === 'everything' ? await allKeys() : told));
  if (told === 'everything') await openShop();
}

/** Keys of all that this window holds, and of what may have been added to the part that is open. */
async function allKeys(): Promise<readonly string[]> {
  // Where they cannot be read, reading the others tells it.
  const added = await keysOfOpenPart().catch(() => []);
  return [...new Set([...agreedKeys(), ...added])];
}

async function keysOfOpenPart(): Promise<readonly string[]> {
  const part = chain.peek()?.part;
  if (part === undefined) return [];
  const [links, earlier] = await Promise.all([loadChain(part), loadVersions(part)]);
  return [...links.records, ...earlier.records].map(keyOf);
}

/**
 * Takes in what now lies at `keys`, but for what this window has changed itself: its write puts both
 * together. What is there no more stays in this window, unless another one said that it erased it: a
 * browser that has cleared the database is to take nothing off the screen.
 */
export async function readAgain(keys: readonly string[]): Promise<void> {
  await takeIn(keys);
}

/** @returns the keys under which nothing lies any more. */
async function takeIn(keys: readonly string[]): Promise<readonly string[]> {
  const before = new Map(keys.map((key) => [key, agreedOn(key)]));
  const { records, nothing } = await lookAt(keys).catch((error: unknown) => {
    // The database is told as dead where something is to be saved.
    console.error(error);
    return { records: [], nothing: [] };
  });
  const pending = new Set(unsaved().map(keyOf));
  // What was written here in the meantime took the other window's state in.
  const isAsBefore = (key: string) => !pending.has(key) && agreedOn(key) === before.get(key);
  arrive(
    records.filter((record) => {
      const key = keyOf(record);
      return isAsBefore(key) && !isSame(record, agreedOn(key));
    }),
  );
  return nothing.filter((key) => isAsBefore(key) && agreedOn(key) !== undefined);
}
