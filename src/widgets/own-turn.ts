/** What waits to be done, in the order in which it was asked for. */
const waiting = new Set<() => void>();

let isGoingOn = false;

/**
 * Does `work` in a turn of its own, and has what it changes drawn before the next of what waits: many
 * pieces of a screen follow at once, and drawn together they would keep a finger waiting.
 *
 * @returns what calls it off.
 */
export function inOwnTurn(work: () => void): () => void {
  waiting.add(work);
  if (!isGoingOn) {
    isGoingOn = true;
    setTimeout(goOn);
  }
  return () => waiting.delete(work);
}

function goOn(): void {
  const [next] = waiting;
  isGoingOn = next !== undefined;
  if (next === undefined) return;
  waiting.delete(next);
  try {
    next();
  } finally {
    // After the drawing of what it has changed, which waits for a turn by now.
    setTimeout(goOn);
  }
}
