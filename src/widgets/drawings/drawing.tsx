import type { ComponentChildren } from 'preact';
import { at, DRAWING_WIDTH } from './geometry';
import './drawings.css';
import './errors.css';
import './faces.css';

interface DrawingProps {
  readonly height: number;
  /** Sentence for those who do not see the drawing; without it the drawing is hidden from them. */
  readonly label?: string | undefined;
  readonly children: ComponentChildren;
}

/** The sheet that a drawing stands on. */
export function Drawing({ height, label, children }: DrawingProps) {
  const viewBox = `0 0 ${DRAWING_WIDTH} ${at(height)}`;
  if (label === undefined) {
    return (
      <svg class="drawing" viewBox={viewBox} aria-hidden="true">
        {children}
      </svg>
    );
  }
  return (
    <svg class="drawing" viewBox={viewBox} role="img" aria-label={label}>
      {children}
    </svg>
  );
}
