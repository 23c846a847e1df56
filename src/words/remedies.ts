import type { Remedy } from '../core/inspection/candidates/candidate';
import { type Face, oppositeFace } from '../core/part/faces';
import type { TypedLength } from '../entry/typed-length';
import { highSideName, pairName } from './faces';
import { asTyped } from './read-as';

/** What would fix a quantity that the readings do not, a sentence for each way; any one of them will do. */
export function remediesInWords(sets: readonly (readonly Remedy[])[]): readonly string[] {
  const [first] = sets;
  if (first === undefined) return ['No single further reading fixes it: begin a new setup.'];
  // Any corners will do, so the number of them says it all.
  const corners = first.filter(({ kind }) => kind === 'micrometer at a corner');
  if (corners.length === first.length && corners[0]?.kind === 'micrometer at a corner') {
    return [`${atCorners(corners[0], corners.length)}.`];
  }
  return sets.map((remedies) => `${capital(remedies.map(remedyInWords).join(', and '))}.`);
}

function atCorners(remedy: Extract<Remedy, { kind: 'micrometer at a corner' }>, count: number) {
  const pair = pairName([remedy.face, oppositeFace(remedy.face)]);
  if (count === 1) {
    return `Measure between ${pair} with the micrometer at one more place, near the ${highSideName(remedy.towards)}`;
  }
  return `Measure between ${pair} with the micrometer at ${count === 2 ? 'two more' : 'three'} places, near the corners and not all in one line, or pass an indicator over the face`;
}

/** One piece of further work, as the middle of a sentence. */
export function remedyInWords(remedy: Remedy): string {
  switch (remedy.kind) {
    case 'swing to the other side':
      return `swing the same setting round and read the ${remedy.face} side`;
    case 'traverse the other side':
      return `run the same column up the ${remedy.face} side`;
    case 'compare both sides':
      return `read ${pairName(remedy.faces)} with one setting`;
    case 'micrometer at two heights':
      return `measure between ${pairName([remedy.face, oppositeFace(remedy.face)])} with a micrometer at two heights`;
    case 'micrometer at a corner':
      return atCorners(remedy, 1).replace(/^M/, 'm');
    case 'turn on all four sides':
      return remedy.column === undefined
        ? 'turn it on all four sides, the same setting untouched'
        : 'turn it on all four sides under the same column';
    case 'seat again and read':
      return `lift the block, seat it again, and read the ${remedy.face} side with the same setting`;
    case 'seat again and traverse':
      return `lift the block, seat it on its ${remedy.base} again, and run the same column up ${sidesInWords(remedy.faces)} once more`;
    case 'assume parallel':
      return `say within what ${pairName([remedy.face, oppositeFace(remedy.face)])} are parallel`;
  }
}

/** Why a micrometer that was at several places tells no taper, and where to go with one of them. */
export function atOneHeightInWords(height: TypedLength): string {
  return `The micrometer was at one height only, ${asTyped(height)} up: measure one of its places near the other end of the face, and put that height in.`;
}

function sidesInWords(faces: readonly Face[]): string {
  return faces.length === 1 ? `the ${faces[0]} side` : `the ${faces.join(' and the ')}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
