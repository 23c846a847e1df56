import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

export interface TapToGoProps {
  /** Given where the tap was, in the page, and the drawing. */
  readonly onTap: (tap: { readonly x: number; readonly y: number }, drawing: SVGElement) => void;
  readonly children: ComponentChildren;
}

/** A drawing that a tap leads from to the field of what was tapped. The keyboard has the fields themselves. */
export function TapToGo({ onTap, children }: TapToGoProps) {
  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const around = root.current;
    const tapped = ({ clientX: x, clientY: y }: MouseEvent) => {
      const drawing = around?.querySelector('svg');
      if (drawing) onTap({ x, y }, drawing);
    };
    // The field keeps the focus until the tap leads to another: without it the drawing would move under the finger.
    const pressed = (event: MouseEvent) => event.preventDefault();
    around?.addEventListener('mousedown', pressed);
    around?.addEventListener('click', tapped);
    return () => {
      around?.removeEventListener('mousedown', pressed);
      around?.removeEventListener('click', tapped);
    };
  }, [onTap]);
  return (
    <div class="tap-to-go" ref={root}>
      {children}
    </div>
  );
}

/** Where a part of a drawing has its middle on the page. */
export function middleOf(part: Element): { readonly x: number; readonly y: number } {
  const { left, top, width, height } = part.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
}

/** The index of the part that lies nearest, as `distance` tells; undefined where there is none. */
export function nearest(
  parts: readonly Element[],
  distance: (middle: { readonly x: number; readonly y: number }) => number,
): number | undefined {
  const distances = parts.map((part) => distance(middleOf(part)));
  const index = distances.indexOf(Math.min(...distances));
  return index === -1 ? undefined : index;
}
