import { useRef } from 'preact/hooks';
import { movedOn, type View } from './view';

/** Degrees per px of a drag: the width of a phone goes nearly half round. */
const PER_PIXEL = 0.5;

/** What an element needs to be dragged. */
export interface Drag {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: (event: PointerEvent) => void;
  readonly onPointerCancel: (event: PointerEvent) => void;
}

interface Held {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  /** The view when the pointer went down. */
  readonly view: View;
}

/** Turns the view by a finger or the mouse: the near side of the block goes with it. */
export function useDrag(view: View, show: (view: View) => void): Drag {
  const held = useRef<Held | undefined>(undefined);
  return {
    onPointerDown: (event) => {
      if (!event.isPrimary || event.button !== 0 || !(event.currentTarget instanceof Element)) {
        return;
      }
      event.currentTarget.setPointerCapture(event.pointerId);
      // A turn under way ends here.
      show(view);
      held.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY, view };
    },
    onPointerMove: (event) => {
      const from = held.current;
      if (from?.pointer !== event.pointerId) return;
      const [across, down] = [event.clientX - from.x, event.clientY - from.y];
      show(movedOn(from.view, { turn: -across * PER_PIXEL, tilt: down * PER_PIXEL }));
    },
    onPointerUp: () => {
      held.current = undefined;
    },
    // The browser has taken the finger for scrolling: what little it had turned is undone.
    onPointerCancel: () => {
      if (held.current) show(held.current.view);
      held.current = undefined;
    },
  };
}
