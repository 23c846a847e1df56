import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** ms that pieces may share a turn for: what is known already is not to wait for turns. */
const SHARED = 4;

/**
 * `value` once all of its `pieces` have been worked out, each that takes long in a turn of its own; before
 * that the value that was there before, none at first. What is drawn from it so follows, and keeps no key waiting.
 */
export function usePrepared<T>(
  value: T,
  piecesOf: (value: T) => readonly (() => void)[],
): T | undefined {
  const [prepared, show] = useState<T>();
  useEffect(() => {
    let turn: ReturnType<typeof setTimeout>;
    const goOn = (pieces: readonly (() => void)[]) => {
      if (pieces.length === 0) return show(() => value);
      turn = setTimeout(goOn, 0, workOff(pieces));
    };
    // Telling the pieces is a piece too.
    turn = setTimeout(() => {
      turn = setTimeout(goOn, 0, piecesOf(value));
    });
    return () => clearTimeout(turn);
  }, [value]);
  return prepared;
}

/** Works off the first of the pieces, and those after it that there is time for; gives the others back. */
function workOff(pieces: readonly (() => void)[]): readonly (() => void)[] {
  const end = performance.now() + SHARED;
  let done = 0;
  do {
    try {
      pieces[done]?.();
    } catch {
      // Drawing meets the same, and there it is told.
    }
    done += 1;
  } while (done < pieces.length && performance.now() < end);
  return pieces.slice(done);
}

interface LaterProps {
  /** How many turns after what stands around it. */
  readonly turns: 1 | 2 | 3;
  readonly children: ComponentChildren;
}

/** Something that follows what stands around it, from its first showing on. */
export function Later({ turns, children }: LaterProps) {
  const [shown, show] = useState<ComponentChildren>();
  useEffect(() => show(children), [children]);
  if (turns === 1) return <>{shown}</>;
  return <Later turns={turns === 3 ? 2 : 1}>{shown}</Later>;
}
