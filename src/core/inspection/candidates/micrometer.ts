import { alongFromBase, type Block, cornersOf, depthBehind, type Triple } from '../../part/block';
import { type Face, outwardNormal } from '../../part/faces';
import type { Reading } from '../../readings/reading';
import { type Candidate, REMEDY_ID } from './candidate';

/** The thickness behind the face at a quarter and at three quarters of the height. */
export function microHeights(face: Face, base: Face, block: Block): Candidate {
  const depth = depthBehind(block, base);
  const at = (height: number): Triple => ({
    ...{ x: 0, y: 0, z: 0 },
    [outwardNormal(base).axis]: alongFromBase(block, base, height),
  });
  return {
    remedy: { kind: 'micrometer at two heights', face, base },
    readings: [depth / 4, (3 * depth) / 4].map((height) => micrometer(face, at(height))),
  };
}

/** The thickness behind the face near each of its corners. */
export function microPlaces(face: Face, block: Block): readonly Candidate[] {
  return cornersOf(block, face).map(({ point, towards }) => ({
    remedy: { kind: 'micrometer at a corner', face, towards },
    readings: [micrometer(face, point)],
  }));
}

function micrometer(face: Face, point: Triple): Reading {
  // Each place is hit or missed by itself: one id for two would make their doubts one.
  const id = `${REMEDY_ID} micrometer at ${point.x} ${point.y} ${point.z}`;
  return { kind: 'micrometer', id, face, point, departure: 0 };
}
