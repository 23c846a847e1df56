import { positiveRoot } from '../../statistics/root';
import type { Posterior } from './posterior';
import { shapeOf, type Tails } from './scatter-shape';

/** The value below which a part of a distribution lies. */
export type Quantile = (part: number) => number;

/** Steps into which each step of the grid is cut to find where a part lies. */
const FINER = 8;

/** Weights below this move no quantile. */
const NOTHING = 1e-9;

/** The quantiles of the typical rate. */
export function typicalQuantiles({ middles, weights }: Posterior): Quantile {
  const density = middles.map((_, index) => weights.reduce((total, row) => total + row[index]!, 0));
  const fine = finelyBetween(density);
  const step = (middles[1]! - middles[0]!) / FINER;
  const below = [0];
  for (let index = 1; index < fine.length; index += 1) {
    below.push(below[index - 1]! + fine[index - 1]! + fine[index]!);
  }
  return (part) => Math.exp(middles[0]! + step * placeOf(part * below.at(-1)!, below));
}

/** The quantiles of the rate of the next pass. */
export function nextQuantiles(posterior: Posterior, tails: Tails): Quantile {
  const shape = shapeOf(tails);
  const cells = cellsOf(posterior);
  const middle = cells.reduce((total, cell) => total + cell.weight * cell.middle, 0);
  return (part) =>
    positiveRoot((rate) => {
      const place = Math.log(rate);
      let value = -part;
      let slope = 0;
      for (const { weight, middle, scale } of cells) {
        const z = (place - middle) / scale;
        value += weight * shape.below(z);
        slope += (weight * shape.density(z)) / scale;
      }
      return { value, slope };
    }, Math.exp(middle));
}

interface Cell {
  readonly weight: number;
  readonly middle: number;
  readonly scale: number;
}

function cellsOf({ middles, scales, weights }: Posterior): readonly Cell[] {
  return weights
    .flatMap((row, at) =>
      row.map((weight, index) => ({ weight, middle: middles[index]!, scale: scales[at]! })),
    )
    .filter(({ weight }) => weight > NOTHING);
}

/** A density on an even grid, filled in by cubics through four of its logarithms. */
function finelyBetween(density: readonly number[]): readonly number[] {
  const logarithms = density.map((one) => Math.log(Math.max(one, Number.MIN_VALUE)));
  return Array.from({ length: (density.length - 1) * FINER + 1 }, (_, index) =>
    Math.exp(cubicAt(logarithms, index / FINER)),
  );
}

/** Lagrange's cubic through the four values about `at`, which counts the places from 0. */
function cubicAt(values: readonly number[], at: number): number {
  const first = Math.min(Math.max(0, Math.floor(at) - 1), values.length - 4);
  const t = at - first;
  return (
    (-values[first]! * (t - 1) * (t - 2) * (t - 3)) / 6 +
    (values[first + 1]! * t * (t - 2) * (t - 3)) / 2 -
    (values[first + 2]! * t * (t - 1) * (t - 3)) / 2 +
    (values[first + 3]! * t * (t - 1) * (t - 2)) / 6
  );
}

/** Where `wanted` lies among rising values, counting places from 0. */
function placeOf(wanted: number, rising: readonly number[]): number {
  const after = Math.max(
    1,
    rising.findIndex((one) => one >= wanted),
  );
  const [low, high] = [rising[after - 1]!, rising[after]!];
  return after - 1 + (high > low ? (wanted - low) / (high - low) : 0);
}
