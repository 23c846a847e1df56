import type { Triple } from '../part/block';
import type { Face } from '../part/faces';
import type { InstrumentFigures } from './kit';

interface ReadingBase {
  readonly id: string;
  /** The instrument that it was read with, where that is another than the kit's. */
  readonly instrument?: InstrumentFigures;
}

/**
 * The block stands on `base`, the comparator's nose touches `face` at `noseHeight` mm and the
 * indicator reads `value` µm at `indicatorHeight` mm, plus being plunger pushed in. All readings
 * of one `setting` share its zero: swing the setting round to the opposite face unchanged.
 */
export interface NoseComparatorReading extends ReadingBase {
  readonly kind: 'nose comparator';
  readonly setting: string;
  readonly face: Face;
  readonly base: Face;
  readonly noseHeight: number;
  readonly indicatorHeight: number;
  readonly value: number;
}

/**
 * The block stands on `base` and the indicator slides up a column to `height` mm, where it reads
 * `value` µm on `face`. All readings of one `column` share its lean; all of one `placing` of the
 * block share a zero and the way the block sits.
 */
export interface ColumnReading extends ReadingBase {
  readonly kind: 'column';
  readonly column: string;
  readonly placing: string;
  readonly face: Face;
  readonly base: Face;
  readonly height: number;
  readonly value: number;
}

/** A micrometer over `face` and its opposite at `point` (mm from the centre): `departure` µm from the drawing's size. */
export interface MicrometerReading extends ReadingBase {
  readonly kind: 'micrometer';
  readonly face: Face;
  readonly point: Triple;
  readonly departure: number;
}

/**
 * The block stands on the face opposite to `face`, and an indicator on a stand passes over `face`
 * and reads `value` µm at `point` (mm from the centre). Readings of one `placing` share a zero.
 */
export interface OverTheTopReading extends ReadingBase {
  readonly kind: 'over the top';
  readonly placing: string;
  readonly face: Face;
  readonly point: Triple;
  readonly value: number;
}

/**
 * The part stands on jacks with `face` levelled, and an indicator on a stand passes over it and
 * reads `value` µm at `point` (mm from the centre). Only the form of the face is left in this.
 */
export interface FaceMapReading extends ReadingBase {
  readonly kind: 'face map';
  /** Readings of one placing belong to one map. */
  readonly placing: string;
  readonly face: Face;
  readonly point: Triple;
  readonly value: number;
}

/** The toolmaker's word that `face` and its opposite are parallel within a zone `within` µm wide. */
export interface ParallelAssumption extends ReadingBase {
  readonly kind: 'assumed parallel';
  readonly face: Face;
  readonly within: number;
}

export type Reading =
  | NoseComparatorReading
  | ColumnReading
  | MicrometerReading
  | OverTheTopReading
  | FaceMapReading
  | ParallelAssumption;
