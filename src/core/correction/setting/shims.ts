import { type Block, cornersOf } from '../../part/block';
import { type Axis, axesInFace, type Face, faceTowards, oppositeFace } from '../../part/faces';
import type { Removal } from '../removal';

/**
 * Growth of the thickness between a face and its opposite per mm along each axis in the face, µm/mm,
 * positive where the block grows thicker along the axis. Left out where the readings do not fix it.
 */
export type Tapers = Readonly<Partial<Record<Axis, number>>>;

/** Between the edge that the block rests on and the near edge of the shim, mm, along each axis. */
export type Spans = Readonly<Partial<Record<Axis, number>>>;

/** A strip under one edge of the face that the block lies on. */
export interface Shim {
  /** The neighbour of the lower face whose edge is lifted. */
  readonly under: Face;
  /** µm, above 0. */
  readonly thickness: number;
  /** mm from the edge that the block rests on to where the shim bears. */
  readonly span: number;
}

/** What lies under one corner of the face that the block lies on. */
export interface CornerSupport {
  readonly towards: readonly [Face, Face];
  /** µm; 0 where the block rests on the table. */
  readonly thickness: number;
}

export interface Shims {
  /** The face that lies on the table. */
  readonly on: Face;
  /** One edge, or two; none where the block lies flat. */
  readonly edges: readonly Shim[];
  /**
   * The same under the four corners, each as far in as the spans say. With two edges no strip will
   * do, for the block lies askew: three of these are needed, and the fourth keeps it from tipping.
   */
  readonly corners: readonly CornerSupport[];
}

/**
 * What to put under the opposite face, so that a cut level with the machine takes `removal` off.
 *
 * After the cut the thickness grows by taper - slope of the removal, τ' along each axis, and the new
 * face is level: so the lower face must stand off the table by a constant less τ'·p. It is lifted
 * where the block is to be thinner, by |τ'| × the span.
 *
 * By hand: a block 60 mm long with parallel faces, bottom on the table, is to lose 6 µm at the left
 * edge of its top and nothing at the right. The slope of the removal along x is -0.1 µm/mm, so
 * τ' = 0 - (-0.1) = 0.1: it will be thicker to the right. The shim goes under the left edge, 6 µm of
 * it; 5 µm where it bears 50 mm from the right edge. Had the block been 6 µm thinner at the right
 * (τ = -0.1), then τ' = 0: no shim, for it already stands high at the left.
 *
 * True to the first order of the slopes; a strip bears with the edge that faces the middle.
 *
 * @param spans left out, a shim bears at the very edge.
 * @returns undefined where a taper is not fixed by the readings.
 * @throws RangeError where a span is not within the block.
 */
export function shimsFor(
  block: Block,
  removal: Removal,
  tapers: Tapers,
  spans: Spans = {},
): Shims | undefined {
  const on = oppositeFace(removal.face);
  const lifts: Lift[] = [];
  for (const axis of axesInFace(removal.face)) {
    const before = tapers[axis];
    if (before === undefined) return undefined;
    const slope = removal.slopes[axis] ?? 0;
    lifts.push(liftOf(axis, before, slope, spanOf(block, axis, spans)));
  }
  const edges = lifts.filter((lift): lift is Shim => lift.under !== undefined);
  const corners = cornersOf(block, on).map(({ towards }) => ({
    towards,
    thickness: edges
      .filter(({ under }) => towards.includes(under))
      .reduce((total, { thickness }) => total + thickness, 0),
  }));
  return { on, edges, corners };
}

/** A shim thinner than this, µm, is rounding: far less than an atom. */
const NOTHING = 1e-8;

type Lift = Shim | { readonly under: undefined };

function liftOf(axis: Axis, before: number, slope: number, span: number): Lift {
  const taper = before - slope;
  const thickness = Math.abs(taper) * span;
  if (thickness < NOTHING) return { under: undefined };
  return { under: faceTowards(axis, -taper), thickness, span };
}

function spanOf({ size }: Block, axis: Axis, spans: Spans): number {
  const span = spans[axis] ?? size[axis];
  if (!(span > 0 && span <= size[axis])) throw new RangeError('A shim bears within the block');
  return span;
}
