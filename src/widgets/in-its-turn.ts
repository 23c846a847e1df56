/**
 * When what has changed is drawn: what was typed in the turn of its key, so that it shows in the frame of
 * the key; everything else in a turn of its own. A tap is many events in one turn, which is long as it is.
 */
export function inItsTurn(draw: () => void): void {
  if (globalThis.event?.type === 'input') queueMicrotask(draw);
  else setTimeout(draw);
}
