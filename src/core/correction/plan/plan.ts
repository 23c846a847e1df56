import type { FaceCorner } from '../../part/block';
import type { Axis, Face } from '../../part/faces';
import type { SizeLimits } from '../../part/part';
import type { Requirement } from '../../part/requirement';
import type { Zone } from '../../zones/zone';
import type { FormPoint } from '../../zones/zone-with-form';
import type { Effect } from '../effects';
import type { CornerRemoval, Removal } from '../removal';

/** A requirement with the zone and the form that the readings show for it. */
export interface MeasuredRequirement {
  readonly requirement: Requirement;
  readonly zone: Zone;
  /** None where the readings show no form. */
  readonly formPoints: readonly FormPoint[];
}

/** The least stock that brings the part right by working certain faces, or what stops it. */
export interface Plan {
  /** The faces that may be worked. */
  readonly faces: readonly Face[];
  /** False where no removal from these faces does it: then the steps are the nearest that can be had. */
  readonly possible: boolean;
  /** What stops it; nothing where it is possible. */
  readonly stops: readonly Stop[];
  /** One for each face that is worked; none where there is nothing to do. */
  readonly steps: readonly PlanStep[];
  /** mm³ in all. */
  readonly volume: number;
  /** Σ of the wedges, µm. */
  readonly wedge: number;
  /** What it does to each requirement that was measured. */
  readonly effects: readonly PlannedEffect[];
  /** The three sizes, along x, y and z. */
  readonly sizes: readonly PlannedSize[];
}

/** One face to work. */
export interface PlanStep {
  readonly face: Face;
  readonly removal: Removal;
  readonly corners: readonly CornerRemoval[];
  /** Neighbours that name the high edge (one) or corner (two). */
  readonly highSide: readonly Face[];
  /** µm to come off there. */
  readonly wedge: number;
  /** mm³ */
  readonly volume: number;
  /** mm from the middle of the face along its axes. */
  readonly pressPoint: Readonly<Partial<Record<Axis, number>>>;
  /** The same as mm in from the high edges. */
  readonly pressDistances: readonly { readonly from: Face; readonly distance: number }[];
}

/** Something that no removal from the faces of a plan gets round. */
export type Stop =
  | {
      readonly kind: 'size';
      readonly axis: Axis;
      /** µm by which the size, less its guard, comes out below its lower limit somewhere. */
      readonly shortfall: number;
      /** µm of that with nothing taken off at all; 0 where the cut is what makes it short. */
      readonly before: number;
    }
  | {
      readonly kind: 'requirement';
      readonly requirement: Requirement;
      /** µm by which width and guard together stay above what they are to come to. */
      readonly excess: number;
    };

/** What a plan does to one requirement, and what it was to do. */
export interface PlannedEffect extends Effect, AimedWidth {
  /** What the doubt may add to the width that is left, µm, at the level of the plan. */
  readonly guard: number;
}

/** What width and guard of a requirement are to come to. */
export interface AimedWidth {
  /** The share of the tolerance, µm. */
  readonly allowed: number;
  /**
   * True where the doubt alone takes up the share, so that the plan can only aim at the least
   * width: the part is to be read again first.
   */
  readonly doubtAlone: boolean;
  /** True where the form that the readings show takes up the share, whatever the slopes. */
  readonly formAlone: boolean;
}

/** A size of the part as a plan leaves it. */
export interface PlannedSize {
  readonly axis: Axis;
  readonly limits: SizeLimits;
  /** False where the readings do not fix the size: then it does not limit the plan. */
  readonly known: boolean;
  readonly corners: readonly PlannedCorner[];
}

/** A size at one of the four corners of the face that looks along its axis. Lengths in µm. */
export interface PlannedCorner extends FaceCorner {
  /** Off both faces together. */
  readonly comesOff: number;
  /** Departure from the nominal size before and after; undefined where it is not known. */
  readonly before: number | undefined;
  readonly after: number | undefined;
  /** How much of the size is not sure, at the level of the plan. */
  readonly guard: number;
  /** How far the size, less its guard, is left below the lower limit; 0 where it is not. */
  readonly short: number;
  /** How far the size is, and stays, over the upper limit; 0 where it is not. */
  readonly over: number;
}
