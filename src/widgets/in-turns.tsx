import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface InTurnsProps {
  readonly children: readonly ComponentChildren[];
  /** Told once all of them are there. */
  readonly onWhole?: () => void;
}

/**
 * Its children, top first: at their first showing each comes a frame after the one above it, so that
 * no screen keeps a finger waiting until all of it is drawn. From then on they are drawn together.
 */
export function InTurns({ children, onWhole }: InTurnsProps) {
  const [shown, show] = useState(1);
  useEffect(() => {
    if (shown < children.length) show(shown + 1);
    else onWhole?.();
  }, [shown, children.length]);
  // One that is not shown yet keeps its place, so that the others stay what they are.
  return <>{children.map((child, place) => (place < shown ? child : null))}</>;
}
