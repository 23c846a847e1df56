import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * `value` once all of its `pieces` have been worked out, each in a turn of its own; before that the
 * value that was there before, none at first. What is drawn from it so follows, and keeps no key waiting.
 */
export function usePrepared<T>(
  value: T,
  piecesOf: (value: T) => readonly (() => void)[],
): T | undefined {
  const [prepared, show] = useState<T>();
  useEffect(() => {
    let turn: ReturnType<typeof setTimeout>;
    const goOn = (pieces: readonly (() => void)[]) => {
      const [first, ...others] = pieces;
      if (first === undefined) return show(() => value);
      first();
      turn = setTimeout(goOn, 0, others);
    };
    turn = setTimeout(() => goOn(piecesOf(value)));
    return () => clearTimeout(turn);
  }, [value]);
  return prepared;
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
