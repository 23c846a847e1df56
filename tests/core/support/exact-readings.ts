import type { Triple } from '../../../src/core/part/block';
import { type Face, oppositeFace, outwardNormal } from '../../../src/core/part/faces';
import type { Reading } from '../../../src/core/readings/reading';
import { type ExactBlock, standOn, thickness } from './exact-block';
import { type Vector, wayTo } from './exact-vectors';
import { micrometer, nose, traverse } from './readings';

/** How the block is put down: turned from facing the comparator by `yaw`, rad, read `aside` mm off the middle. */
export interface Placing {
  readonly yaw: number;
  readonly aside: number;
}

/** What a nose comparator shows on `face`, to which it comes along -x with its nose at `low`. */
export function exactNose(
  block: ExactBlock,
  face: Face,
  base: Face,
  placing: Placing,
  setting: {
    readonly name: string;
    readonly zero: number;
    readonly low: number;
    readonly high: number;
  },
): Reading {
  const plane = standOn(block, base, face, placing.yaw);
  const standsAt = (height: number) => wayTo(plane, [0, placing.aside, height], [1, 0, 0]);
  const { name, zero, low, high } = setting;
  const value = zero + (standsAt(high) - standsAt(low)) * 1000;
  return nose(face, value, { setting: name, base, low, high });
}

/**
 * What an indicator shows that slides up a straight column which leans by `lean` rad towards the
 * block, square to the column, `far` mm away from the middle of the block.
 */
export function exactTraverse(
  block: ExactBlock,
  face: Face,
  base: Face,
  placing: Placing,
  column: { readonly name: string; readonly lean: number; readonly far: number },
  heights: readonly number[],
): readonly Reading[] {
  const plane = standOn(block, base, face, placing.yaw);
  const [sine, cosine] = [Math.sin(column.lean), Math.cos(column.lean)];
  const values = heights.map((height) => {
    const carriage: Vector = [column.far - height * sine, placing.aside, height * cosine];
    const gap = wayTo(plane, carriage, [-cosine, 0, -sine]);
    return [height, (column.far - gap) * 1000] as const;
  });
  return traverse(face, Object.fromEntries(values), { column: column.name, base });
}

/** What a micrometer shows over `face` and its opposite at `point`. */
export function exactMicrometer(block: ExactBlock, face: Face, point: Triple): Reading {
  const shown = thickness(block, face, oppositeFace(face), [point.x, point.y, point.z]);
  const nominal = block.size[outwardNormal(face).axis];
  return micrometer(face, point, (shown - nominal) * 1000);
}
