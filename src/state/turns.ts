/** ms that work may go on for before the screen has its turn: half a frame, so that a key still answers in time. */
const TURN = 8;

/** For long work in small steps: what it gives is to be awaited after each step. */
export function turns(): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < TURN) return;
    await new Promise((resolve) => setTimeout(resolve));
    since = performance.now();
  };
}
