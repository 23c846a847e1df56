/*
 * Windows of the app tell each other the keys of what they have written. What it says lies on the
 * disk: each window reads there what it needs.
 */

const NAME = 'highedge records';

/** Keys of what was written or erased; 'everything' where so much was that nobody has counted. */
export type Told = readonly string[] | 'everything';

/** Undefined where the browser has none: then each window follows the others only when it writes. */
const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(NAME);

export function tellOtherWindows(told: Told): void {
  channel?.postMessage(told);
}

export function onToldByOthers(listen: (told: Told) => void): void {
  channel?.addEventListener('message', ({ data }: MessageEvent<Told>) => listen(data));
}
