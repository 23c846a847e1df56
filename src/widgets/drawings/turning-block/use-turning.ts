import { useEffect, useRef, useState } from 'preact/hooks';
import { type Drag, useDrag } from './use-drag';
import { betweenViews, movedOn, type View } from './view';

/** ms that a button takes to turn the block. */
const GLIDE = 350;

interface Turning {
  readonly view: View;
  readonly drag: Drag;
  readonly moveBy: (by: Partial<View>) => void;
  readonly glideOn: (to: (aim: View) => View) => void;
}

/** The view, and the ways to change it. A new `first` view takes the place of what was turned to. */
export function useTurning(first: View): Turning {
  const [view, setView] = useState(first);
  /** Where a glide under way will end, else the view itself. */
  const aim = useRef(first);
  const frame = useRef(0);
  const show = (next: View) => {
    cancelAnimationFrame(frame.current);
    aim.current = next;
    setView(next);
  };
  const glideOn = (to: (aim: View) => View) => {
    cancelAnimationFrame(frame.current);
    aim.current = to(aim.current);
    const began = performance.now();
    const step = (now: number) => {
      const share = Math.min(1, Math.max(0, (now - began) / GLIDE));
      if (share === 1) return show(aim.current);
      setView(betweenViews(view, aim.current, share * share * (3 - 2 * share)));
      frame.current = requestAnimationFrame(step);
    };
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) show(aim.current);
    else frame.current = requestAnimationFrame(step);
  };
  useEffect(() => {
    const { turn, tilt } = aim.current;
    // At first it is shown already: another view, though the same, would be drawn again.
    if (turn !== first.turn || tilt !== first.tilt) show({ turn: first.turn, tilt: first.tilt });
    return () => cancelAnimationFrame(frame.current);
  }, [first.turn, first.tilt]);
  return { view, drag: useDrag(view, show), moveBy: (by) => show(movedOn(view, by)), glideOn };
}
