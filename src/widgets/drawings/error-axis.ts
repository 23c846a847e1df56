import { clamp, DRAWING_WIDTH, drawable, finite } from './geometry';

/** The scale that errors and limits share. */
export interface Axis {
  /** Where a value stands; beyond the ends it is kept at them. */
  x(value: number): number;
  readonly limits: readonly { readonly sign: '+' | '-'; readonly x: number }[];
}

const LEFT = 8;
const RIGHT = DRAWING_WIDTH - 8;

/** An error and the ends of its doubt. */
export interface DoubtfulError {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * A scale over all values with their whiskers and the limit. It has both limits where a value is negative;
 * else it begins at 0, or where the lowest whisker ends.
 */
export function axisOver(limit: number, errors: readonly DoubtfulError[]): Axis {
  const bound = drawable(Math.abs(limit));
  const ends = errors.flatMap(({ low, high }) => [finite(low), finite(high)]);
  const signed = errors.some(({ value }) => value < 0);
  const most = Math.max(bound, ...ends.map((end) => (signed ? Math.abs(end) : end))) * 1.12;
  const least = signed ? -most : Math.min(0, ...ends) * 1.12;
  const x = (value: number) =>
    LEFT + clamp((finite(value) - least) / drawable(most - least), 0, 1) * (RIGHT - LEFT);
  return {
    x,
    limits: signed
      ? [
          { sign: '-', x: x(-bound) },
          { sign: '+', x: x(bound) },
        ]
      : [{ sign: '+', x: x(bound) }],
  };
}
