/**
 * Does `work` once nothing more urgent is to be done, as far as the browser can tell.
 *
 * @param pause how long a browser that cannot tell is left alone first, ms.
 */
export function whenIdle(work: () => void, pause = 0): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(() => work());
  // Safari has no idle turns.
  else setTimeout(work, pause);
}
