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

/** ms after a key or a tap in which somebody may well do the next one. */
const AT_WORK = 700;

let lastTouch = Number.NEGATIVE_INFINITY;
const touch = () => {
  lastTouch = performance.now();
};
if (typeof document !== 'undefined') {
  for (const kind of ['input', 'pointerdown', 'keydown']) {
    document.addEventListener(kind, touch, { capture: true, passive: true });
  }
}

/**
 * The same for what nobody waits for: not before the hands have been at rest for a while. An idle
 * moment between two keys is shorter, on a slow phone, than what would be begun in it.
 */
export function whenAtRest(work: () => void): void {
  const left = lastTouch + AT_WORK - performance.now();
  if (left > 0) setTimeout(() => whenAtRest(work), left);
  else whenIdle(work);
}
