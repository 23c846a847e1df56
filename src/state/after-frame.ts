/** How long a page that is not seen, and so draws no frame, waits for one; ms. */
const LONGEST = 100;

/**
 * Does `work` once the frame that is being made is on the screen, in a turn of its own.
 *
 * @returns what calls it off.
 */
export function afterFrame(work: () => void): () => void {
  let turn: ReturnType<typeof setTimeout> | undefined;
  const begin = () => {
    cancel();
    turn = setTimeout(work);
  };
  const longest = setTimeout(begin, LONGEST);
  const frame = globalThis.requestAnimationFrame?.(begin);
  const cancel = () => {
    clearTimeout(longest);
    if (frame !== undefined) cancelAnimationFrame(frame);
    clearTimeout(turn);
  };
  return cancel;
}
