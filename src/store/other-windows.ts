/*
 * Windows of the app tell each other the keys of what they have written. What it says lies on the
 * disk: each window reads there what it needs.
 */

const NAME = 'highedge records';

/** Undefined where the browser has none: then each window follows the others only when it writes. */
const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(NAME);

export function tellOtherWindows(keys: readonly string[]): void {
  channel?.postMessage(keys);
}

export function onToldByOthers(listen: (keys: readonly string[]) => void): void {
  channel?.addEventListener('message', ({ data }: MessageEvent<readonly string[]>) => listen(data));
}
