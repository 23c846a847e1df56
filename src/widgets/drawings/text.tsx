import type { ComponentChildren } from 'preact';
import { at } from './geometry';

interface TextProps {
  readonly x: number;
  readonly y: number;
  /** Which part of the text stands at x. */
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Further classes. */
  readonly kind?: string;
  readonly children: ComponentChildren;
}

/** A line of text; y is its middle. */
export function Text({ x, y, anchor = 'middle', kind = '', children }: TextProps) {
  return (
    <text
      class={`drawing-text ${kind}`.trim()}
      x={at(x)}
      y={at(y)}
      dy="0.36em"
      text-anchor={anchor}
    >
      {children}
    </text>
  );
}
