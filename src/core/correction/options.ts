import type { Block } from '../part/block';
import type { Axis, Face } from '../part/faces';
import type { Part } from '../part/part';
import type { Requirement } from '../part/requirement';
import type { Zone } from '../zones/zone';
import { correctingSlopes } from './correcting-slopes';
import { type Effect, effectOf } from './effects';
import { pressDistances, pressPoint } from './press-point';
import {
  atCorners,
  type CornerRemoval,
  highSide,
  leastRemoval,
  type Removal,
  volumeOf,
  wedgeOf,
} from './removal';

/** An error below this, in µm, is rounding. */
const NO_ERROR = 1e-9;

/** One way to put a requirement right: work one face. */
export interface CorrectionOption {
  readonly requirement: Requirement;
  readonly face: Face;
  /** True where the part says that this face is finished and must be left. */
  readonly finished: boolean;
  readonly removal: Removal;
  /** Neighbours that name the high edge (one) or corner (two). */
  readonly highSide: readonly Face[];
  /** µm to come off there. */
  readonly wedge: number;
  readonly corners: readonly CornerRemoval[];
  /** mm³ */
  readonly volume: number;
  /** mm from the middle of the face along its axes. */
  readonly pressPoint: Readonly<Partial<Record<Axis, number>>>;
  /** The same as mm in from the high edges. */
  readonly pressDistances: readonly { readonly from: Face; readonly distance: number }[];
  readonly effects: readonly Effect[];
}

/** A requirement with the zone that was found for it. */
export interface MeasuredRequirement {
  readonly requirement: Requirement;
  readonly zone: Zone;
}

/**
 * The ways to bring the error of `target` to nothing by working one of its two faces, least stock
 * first, faces marked finished last. None where there is no error at all.
 *
 * @param measured every requirement whose zone is known, to tell what each way does to it.
 */
export function correctionOptions(
  target: MeasuredRequirement,
  measured: readonly MeasuredRequirement[],
  part: Part,
  level: number,
): readonly CorrectionOption[] {
  if (target.zone.width < NO_ERROR) return [];
  return [target.requirement.face, target.requirement.datum]
    .map((face) => optionOn(face, target, measured, part, level))
    .sort((a, b) => Number(a.finished) - Number(b.finished) || a.volume - b.volume);
}

function optionOn(
  face: Face,
  target: MeasuredRequirement,
  measured: readonly MeasuredRequirement[],
  part: Part,
  level: number,
): CorrectionOption {
  const block: Block = part.block;
  const slopes = correctingSlopes(target.requirement, face, target.zone, block);
  const removal = leastRemoval(block, face, slopes);
  return {
    requirement: target.requirement,
    face,
    finished: part.finished.includes(face),
    removal,
    highSide: highSide(removal),
    wedge: wedgeOf(block, removal),
    corners: atCorners(block, removal),
    volume: volumeOf(block, removal),
    pressPoint: pressPoint(block, removal),
    pressDistances: pressDistances(block, removal),
    effects: measured.map(({ requirement, zone }) =>
      effectOf(removal, requirement, zone, block, level),
    ),
  };
}
