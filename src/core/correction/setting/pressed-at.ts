import { inverseOf } from '../../linear-program/inverse';
import { type Block, cornersOf } from '../../part/block';
import { axesInFace, type Face } from '../../part/faces';
import {
  areaOf,
  type Corner,
  heightAt,
  momentsOf,
  type Plane,
  wherePositive,
} from './contact-polygon';
import { type FacePoint, kernShare } from './kern';

/** How a face lies on an even bed, pressed at one point. Pressures over the mean of the whole face. */
export interface Contact {
  /** Of the way from the middle to the edge of the kern; above 1 the face does not all lie down. */
  readonly kernShare: number;
  /** The part of the face that lies down, 0 to 1. */
  readonly share: number;
  /** The corners of that part, going round it, mm from the middle of the face. */
  readonly lying: readonly FacePoint[];
  /** At the corners of the face; 0 where it has lifted. */
  readonly corners: readonly {
    readonly towards: readonly [Face, Face];
    readonly pressure: number;
  }[];
  /** The most, at the corner or the edge that is pressed hardest: so many times the mean it cuts there. */
  readonly greatest: number;
}

/**
 * How `face` lies on an even bed when it is pressed at `point`: a rigid block has linear pressure,
 * and where that would be below 0 it has lifted. Within the kern all of it lies down. Beyond, along
 * one axis, 3·(L/2 - e) of the length L does, with 2·P/(3·B·(L/2 - e)) at the edge that is pressed
 * (the rule of eccentric footings); off both axes the line where it lifts is found by balancing
 * force and moments, to rounding.
 *
 * @throws RangeError where the point is not within the face: the block tips over.
 */
export function pressedAt(block: Block, face: Face, point: FacePoint): Contact {
  const [u, v] = axesInFace(face);
  // All in lengths of the face, from the point that is pressed: only the force is then not 0.
  const press: Corner = [(point[u] ?? 0) / block.size[u], (point[v] ?? 0) / block.size[v]];
  if (!press.every((off) => Math.abs(off) < 0.5)) {
    throw new RangeError('The block tips over when it is pressed outside');
  }
  const from = (corner: Corner): Corner => [corner[0] - press[0], corner[1] - press[1]];
  const { pressure, lying } = balanced(SQUARE.map(from));
  const corners = cornersOf(block, face).map(({ point: at, towards }) => {
    const corner = from([at[u] / block.size[u], at[v] / block.size[v]]);
    return { towards, pressure: Math.max(0, heightAt(pressure, corner)) };
  });
  return {
    kernShare: kernShare(block, face, point),
    share: areaOf(lying),
    lying: lying.map(([a, b]) => ({
      [u]: (a + press[0]) * block.size[u],
      [v]: (b + press[1]) * block.size[v],
    })),
    corners,
    greatest: Math.max(...corners.map((corner) => corner.pressure)),
  };
}

const SQUARE: readonly Corner[] = [
  [-0.5, -0.5],
  [0.5, -0.5],
  [0.5, 0.5],
  [-0.5, 0.5],
];

/** An area that changes by less than this part of itself has settled. */
const SETTLED = 1e-14;

const MOST_ROUNDS = 200;

/**
 * The linear pressure on `face` that balances a force of 1 at the origin, and where it is above 0.
 * Newton's method: the pressure that balances over what lies down now tells what lies down next.
 */
function balanced(face: readonly Corner[]): {
  readonly pressure: Plane;
  readonly lying: readonly Corner[];
} {
  let lying = face;
  let pressure = pressureOver(lying);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = wherePositive(face, pressure);
    const change = Math.abs(areaOf(next) - areaOf(lying));
    lying = next;
    if (change <= SETTLED * areaOf(lying)) break;
    pressure = pressureOver(lying);
  }
  return { pressure, lying };
}

/** Pressure linear over a polygon, with a force of 1 and no moment about the origin. */
function pressureOver(polygon: readonly Corner[]): Plane {
  const [a, , , b, , , c] = inverseOf(momentsOf(polygon), 3);
  return [a!, b!, c!];
}
