import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * `value` as it was, until the frame with what is drawn at once is on the screen: what can wait
 * follows in a turn of its own. Given the outcome of another `useLater` it follows one turn after.
 */
export function useLater<T>(value: T): T {
  const [shown, show] = useState(value);
  // Effects run once the frame is painted.
  useEffect(() => show(() => value), [value]);
  return shown;
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
