import type { Triple } from '../../../core/part/block';
import {
  AXES,
  type Axis,
  axesInFace,
  FACES,
  type Face,
  outwardNormal,
} from '../../../core/part/faces';
import { drawable, finite } from '../geometry';
import { drawnSizes, exaggerationOf } from './exaggeration';
import type { ShownBlock, ShownRemoval } from './shown-block';
import type { Plane } from './space';

/*
 * The block as a solid to be drawn: as long as it is in mm, its errors larger by the factor, its short
 * sides perhaps longer than they are. Errors are the same number of times as large in every direction.
 */

/** A block between six planes, with what is to come off it. */
export interface DrawnBlock {
  readonly shown: ShownBlock;
  readonly sizes: Triple;
  /** How many times as large the errors are; absent where there is none. */
  readonly factor?: number;
  /** True where the short sides are drawn longer than they are. */
  readonly lengthened: boolean;
  /** True where any face is drawn out of square. */
  readonly leans: boolean;
  /** The faces as they are now. */
  readonly faces: Readonly<Record<Face, Plane>>;
  readonly removals: readonly DrawnRemoval[];
}

export interface DrawnRemoval {
  readonly shown: ShownRemoval;
  /** The face once it is worked: the wedge lies out of this plane, within the block. */
  readonly finished: Plane;
  /** Which way the removal grows, and how fast; 0 where the cut is level. */
  readonly growth: Triple;
}

const MIDDLE: Triple = { x: 0, y: 0, z: 0 };

export function drawnBlock(shown: ShownBlock): DrawnBlock {
  const sizes = drawnSizes(shown.size);
  const factor = exaggerationOf(shown);
  const enlarged = (factor ?? 0) / 1000;
  const faces = Object.fromEntries(
    FACES.map((face) => [face, planeOf(shown, sizes, face, enlarged)]),
  ) as Record<Face, Plane>;
  const removals = (shown.removals ?? []).map((removal) =>
    drawnRemoval(faces[removal.face], sizes, removal, enlarged),
  );
  return {
    shown,
    sizes,
    lengthened: AXES.some((axis) => sizes[axis] > drawable(shown.size[axis]) * (1 + 1e-9)),
    leans: FACES.some((face) => axesInFace(face).some((axis) => faces[face].normal[axis] !== 0)),
    faces,
    removals,
    ...(factor !== undefined && { factor }),
  };
}

/** The face as it deviates: it stands out by slope·p, p from the middle of the face. */
function planeOf(shown: ShownBlock, sizes: Triple, face: Face, enlarged: number): Plane {
  const { axis, sign } = outwardNormal(face);
  const normal: Record<Axis, number> = { ...MIDDLE, [axis]: sign };
  for (const along of axesInFace(face)) {
    // The rise over the whole face keeps its size where the face is drawn longer than it is.
    const rise = finite(shown.slopes?.[face]?.[along] ?? 0) * drawable(shown.size[along]);
    normal[along] = (-rise * enlarged) / sizes[along];
  }
  return { normal, distance: sizes[axis] / 2 };
}

function drawnRemoval(
  current: Plane,
  sizes: Triple,
  shown: ShownRemoval,
  enlarged: number,
): DrawnRemoval {
  const growth: Record<Axis, number> = { ...MIDDLE };
  for (const axis of axesInFace(shown.face)) {
    const rise = meanTowards(shown, axis, 1) - meanTowards(shown, axis, -1);
    growth[axis] = (rise * enlarged) / sizes[axis];
  }
  const { normal, distance } = current;
  const finished = {
    normal: { x: normal.x + growth.x, y: normal.y + growth.y, z: normal.z + growth.z },
    distance: distance - mean(shown.corners.map(({ removal }) => removal)) * enlarged,
  };
  return { shown, finished, growth };
}

/** The mean removal, µm, of the corners on one side of the face. */
function meanTowards({ corners }: ShownRemoval, axis: Axis, sign: number): number {
  const there = corners.filter(({ towards }) =>
    towards.some((face) => {
      const normal = outwardNormal(face);
      return normal.axis === axis && normal.sign === sign;
    }),
  );
  return mean(there.map(({ removal }) => removal));
}

function mean(values: readonly number[]): number {
  const numbers = values.map(finite);
  return numbers.reduce((sum, value) => sum + value, 0) / Math.max(1, numbers.length);
}
