import { type Face, oppositeFace } from '../core/part/faces';
import { type Asked, kindOf } from '../core/part/requirement';

/** A face as it begins a sentence or labels a field. */
export function faceLabel(face: Face): string {
  return face.charAt(0).toUpperCase() + face.slice(1);
}

/** Two faces that go together: 'right and left'. */
export function pairName([one, other]: readonly [Face, Face]): string {
  return `${one} and ${other}`;
}

/** Sides to be seated and read: 'right and left', 'all four sides', or 'each side' where it is not one pair. */
export function sidesInWords(sides: readonly [Face, Face] | 'all four' | undefined): string {
  if (sides === undefined) return 'each side';
  return sides === 'all four' ? 'all four sides' : pairName(sides);
}

/** Where on its face the removal is greatest, from the neighbours it grows towards: 'left edge', 'back left corner'. */
export function highSideName(highSide: readonly Face[]): string {
  const upright = (face: Face) => face === 'top' || face === 'bottom';
  const depth = (face: Face) => face === 'back' || face === 'front';
  const order = (face: Face) => (upright(face) ? 0 : depth(face) ? 1 : 2);
  const names = [...highSide].sort((a, b) => order(a) - order(b));
  return `${names.join(' ')} ${names.length === 1 ? 'edge' : 'corner'}`;
}

/** Where the removal feathers to nothing. */
export function lowSideName(highSide: readonly Face[]): string {
  return highSideName(highSide.map(oppositeFace));
}

const RELATIONS = {
  squareness: 'square to',
  parallelism: 'parallel to',
  flatness: 'flat',
} as const;

/** What the drawing asks, without the amount: 'Right square to bottom', 'Bottom flat'. */
export function requirementName({ face, datum }: Asked): string {
  return [faceLabel(face), RELATIONS[kindOf({ face, datum })], datum].filter(Boolean).join(' ');
}
