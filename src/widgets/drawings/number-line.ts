import { DRAWING_WIDTH } from './geometry';

/** A scale of µm across a drawing. */
export interface NumberLine {
  readonly x: (value: number) => number;
  readonly ticks: readonly number[];
}

const MARGIN = 26;
const PITCH = 10;

/** The scale from `least` to `most`, with a tick at every ten. */
export function numberLine(least: number, most: number): NumberLine {
  const room = DRAWING_WIDTH - 2 * MARGIN;
  const first = Math.ceil(least / PITCH);
  const count = Math.max(0, Math.floor(most / PITCH) - first + 1);
  return {
    x: (value) => MARGIN + ((value - least) / (most - least)) * room,
    ticks: Array.from({ length: count }, (_, index) => (first + index) * PITCH),
  };
}
