import type { Triple } from '../../../core/part/block';
import type { Axis, Face } from '../../../core/part/faces';

/**
 * Slopes of a face along the axes in it, µm/mm: positive where the face grows outward along the axis.
 * An axis along which nothing is known is left out; the face is drawn square along it.
 */
export type KnownSlopes = Readonly<Partial<Record<Axis, number | undefined>>>;

/** What comes off a face. */
export interface ShownRemoval {
  readonly face: Face;
  /** µm at the four corners of the face, each named by the two neighbours that meet there. */
  readonly corners: readonly {
    readonly towards: readonly [Face, Face];
    readonly removal: number;
  }[];
  /** Neighbours that name the high edge (one) or the high corner (two); none where the cut is level. */
  readonly highSide: readonly Face[];
  /** What is written there, as short as may be: 'left edge high'. */
  readonly highText: string;
  /** Where to press, mm from the middle of the face along each of its axes; left out: nowhere. */
  readonly press?: Readonly<Partial<Record<Axis, number>>>;
}

/** The face that is the datum, and the letter that the drawing gives it. */
export interface ShownDatum {
  readonly face: Face;
  readonly letter: string;
}

/** All that the drawing in space shows of a block. */
export interface ShownBlock {
  /** Nominal sizes, mm. */
  readonly size: Triple;
  /** What is known of the faces; one that is left out is drawn plain. */
  readonly slopes?: Readonly<Partial<Record<Face, KnownSlopes>>>;
  readonly removals?: readonly ShownRemoval[];
  readonly datum?: ShownDatum;
}

/** True where no slope of `face` is known. */
export function isUnknown({ slopes }: ShownBlock, face: Face): boolean {
  return Object.values(slopes?.[face] ?? {}).every((slope) => slope === undefined);
}
