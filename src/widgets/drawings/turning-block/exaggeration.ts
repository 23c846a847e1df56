import type { Triple } from '../../../core/part/block';
import { AXES, axesInFace, FACES } from '../../../core/part/faces';
import { clamp, drawable, finite } from '../geometry';
import type { ShownBlock } from './shown-block';

/** A size is never drawn shorter than this share of the longest one: names must find room. */
const LEAST_SHARE = 0.36;

/** What the largest error is to be, as a share of the smallest drawn size. */
const SHARE = 0.12;

/** Beyond this, what is drawn would be less than any comparator sees. */
const MOST = 100_000;

/**
 * The sizes to draw a block with: the longest as it is, the others in proportion; where one would be
 * too thin to be drawn on, all are drawn nearer to the longest, in their order.
 */
export function drawnSizes(size: Triple): Triple {
  const sizes = AXES.map((axis) => drawable(size[axis]));
  const longest = Math.max(...sizes);
  const thinnest = Math.min(...sizes) / longest;
  const power = thinnest < LEAST_SHARE ? Math.log(LEAST_SHARE) / Math.log(thinnest) : 1;
  const [x = 1, y = 1, z = 1] = sizes.map((one) => longest * (one / longest) ** power);
  return { x, y, z };
}

/** The largest of the errors and of what comes off, µm, at any corner of a face. */
export function largestError({ size, slopes = {}, removals = [] }: ShownBlock): number {
  const ofFaces = FACES.map((face) =>
    axesInFace(face).reduce((rise, axis) => {
      const slope = finite(slopes[face]?.[axis] ?? 0);
      return rise + (Math.abs(slope) * drawable(size[axis])) / 2;
    }, 0),
  );
  const ofRemovals = removals.flatMap(({ corners }) =>
    corners.map(({ removal }) => Math.max(0, finite(removal))),
  );
  return Math.max(...ofFaces, ...ofRemovals);
}

/** How many times as large the errors are drawn; undefined where there is none to draw. */
export function exaggerationOf(block: ShownBlock): number | undefined {
  const largest = largestError(block) / 1000;
  if (largest === 0) return undefined;
  const drawn = drawnSizes(block.size);
  const smallest = Math.min(...AXES.map((axis) => drawn[axis]));
  return roundFactor(Math.min(MOST, (SHARE * smallest) / largest));
}

/** The nearest of 1, 2 and 5 × 10ⁿ by its ratio to `exact`, a positive number. */
export function roundFactor(exact: number): number {
  const power = Math.floor(Math.log10(exact));
  const first = clamp(exact / 10 ** power, 1, 10);
  const [digit = 1] = [1, 2, 5, 10].sort((a, b) => farFrom(first, a) - farFrom(first, b));
  // Through its text, so that 5 × 10⁻¹ is 0.5 and not a hair beside it.
  return Number(`${digit}e${power}`);
}

function farFrom(one: number, other: number): number {
  return Math.abs(Math.log(one / other));
}
