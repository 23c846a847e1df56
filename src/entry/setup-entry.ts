import type { Face } from '../core/part/faces';
import type { IndicatorEntry, MicrometerEntry } from './instruments';
import type { InstrumentName } from './kit-entry';
import type { TypedLength } from './typed-length';

/*
 * A setup is one way of reading one pair of opposite faces, as typed. A placing is one time that
 * the block was set down; reading a face again after lifting it is a placing more.
 */

interface SetupBase {
  readonly id: string;
  readonly faces: readonly [Face, Face];
}

/** What a setup with an indicator was read with, where it was taken out of the drawer: as it was known then. */
interface ReadByIndicator {
  readonly indicator?: IndicatorEntry;
}

/** One setting of the nose comparator, swung round to both faces or to all four sides. */
export interface NoseComparatorSetup extends SetupBase, ReadByIndicator {
  readonly kind: 'nose comparator';
  /** Which comparator: its zero is followed from one inspection to the next. */
  readonly instrument?: InstrumentName;
  readonly base: Face;
  readonly noseHeight: TypedLength;
  readonly indicatorHeight: TypedLength;
  readonly placings: readonly NosePlacing[];
}

export interface NosePlacing {
  readonly id: string;
  readonly face: Face;
  /** What the block stands on this time; left out, the setup's own base. */
  readonly base?: Face;
  readonly reading: TypedLength;
}

/** One column with an indicator that slides to the same heights on each placing, on both faces or on all four sides. */
export interface ColumnSetup extends SetupBase, ReadByIndicator {
  readonly kind: 'column';
  /** Which column: its lean is followed from one inspection to the next. */
  readonly instrument?: InstrumentName;
  readonly base: Face;
  readonly heights: readonly ColumnHeight[];
  readonly placings: readonly ColumnPlacing[];
}

export interface ColumnHeight {
  readonly id: string;
  readonly height: TypedLength;
}

export interface ColumnPlacing {
  readonly id: string;
  readonly face: Face;
  /** What the block stands on this time; left out, the setup's own base. */
  readonly base?: Face;
  /** By the id of the height. */
  readonly readings: Readonly<Record<string, TypedLength>>;
}

/** The thickness between the two faces at several places. */
export interface MicrometerSetup extends SetupBase {
  readonly kind: 'micrometer';
  /** Which micrometer, as it was known then. */
  readonly micrometer?: MicrometerEntry;
  readonly places: readonly MicrometerPlace[];
}

/** A place is given by its distances from the two edges that `placeEdges` names. */
export interface MicrometerPlace {
  readonly id: string;
  readonly up: TypedLength;
  /** Left empty it is the middle. */
  readonly across: TypedLength;
  readonly thickness: TypedLength;
  /** Present where it was taken over from earlier: when the readings were begun that it comes from, ISO 8601 in UTC. */
  readonly takenOver?: string;
}

/** The toolmaker's word that the two faces are parallel. */
export interface AssumptionSetup extends SetupBase {
  readonly kind: 'assumed parallel';
  readonly within: TypedLength;
}

/**
 * An indicator passed over the first of the faces at several places. Over the top, the block
 * stands on the other face, so that it reads the thickness; on jacks the first face is levelled,
 * so that only its form is read.
 */
export interface OverFaceSetup extends SetupBase, ReadByIndicator {
  readonly kind: 'over the top' | 'face map';
  readonly places: readonly OverFacePlace[];
}

export interface OverFacePlace {
  readonly id: string;
  readonly up: TypedLength;
  /** Left empty it is the middle. */
  readonly across: TypedLength;
  readonly reading: TypedLength;
}

export type SetupEntry =
  | NoseComparatorSetup
  | ColumnSetup
  | MicrometerSetup
  | OverFaceSetup
  | AssumptionSetup;
export type SetupKind = SetupEntry['kind'];
