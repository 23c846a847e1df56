import { type Block, depthBehind } from '../part/block';
import { axesInFace } from '../part/faces';
import { kindOf, type Requirement } from '../part/requirement';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { formGroupsOf } from './form-groups';
import { likelyForm } from './likely-form';

/** A place on a face where a reading shows its form: what is left after the plane. */
export interface FormPoint {
  /** Place along each part of the zone from the face's middle, as a share of its length: ±1/2 at the ends. */
  readonly shares: readonly number[];
  /** Likely form, µm, + where there is more material. */
  readonly residual: number;
  /** Points of one group were held against one line or plane. */
  readonly group: string;
  /** Standard uncertainty of the same, µm. */
  readonly standard: number;
}

/**
 * Width in µm of the zone that holds the fitted plane carried to the face's corners, and the form
 * at the points read: the zone of ISO 1101 has to hold the face itself, not its plane alone.
 *
 * @param parts what each slope makes over the length of the face, µm, with its sign, as in `Zone`.
 */
export function widthWithForm(parts: readonly number[], points: readonly FormPoint[]): number {
  // Of all corners Σ ±part/2, the furthest out and in have every part at its full size.
  let highest = 0;
  for (const part of parts) highest += Math.abs(part) / 2;
  let lowest = -highest;
  for (const { shares, residual } of points) {
    let height = residual;
    for (let i = 0; i < parts.length; i += 1) height += parts[i]! * shares[i]!;
    if (height > highest) highest = height;
    if (height < lowest) lowest = height;
  }
  return highest - lowest;
}

type Pair = Pick<Requirement, 'face' | 'datum'>;

/**
 * The points where `readings` show form that counts for `requirement`, each placing by itself; none
 * where nothing does. Which do: `formGroupsOf`.
 */
export function formPointsOf(
  requirement: Pair,
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly FormPoint[] {
  const lengths = lengthsOf(requirement, block);
  return formGroupsOf(requirement, readings, block, kit).flatMap((group) => {
    const { residuals, standard } = likelyForm(group);
    return group.places.map((place, index) => ({
      shares: place.map((along, part) => along / lengths[part]!),
      residual: residuals[index]!,
      group: group.name,
      standard,
    }));
  });
}

/** How much of a length of the face is read, both in mm. */
export interface FormSpan {
  readonly read: number;
  readonly face: number;
}

/** What `points` span along each part of the zone of `requirement`; none where there is no point. */
export function formSpansOf(
  requirement: Pair,
  points: readonly FormPoint[],
  block: Block,
): readonly FormSpan[] {
  if (points.length === 0) return [];
  return lengthsOf(requirement, block).map((face, part) => {
    const shares = points.map((point) => point.shares[part]!);
    return { read: (Math.max(...shares) - Math.min(...shares)) * face, face };
  });
}

/** Length of the face along each part of the zone, mm, in the order of `zoneForms`. */
function lengthsOf(requirement: Pair, block: Block): readonly number[] {
  const { face, datum } = requirement;
  if (kindOf(requirement) === 'squareness') return [depthBehind(block, datum)];
  return axesInFace(face).map((axis) => block.size[axis]);
}
