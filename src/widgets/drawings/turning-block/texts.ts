import { faceLabel } from '../../../words/faces';
import type { Point } from '../geometry';
import { hullOf, type Shape } from './convex';
import type { DatumMark } from './datum-mark';
import type { Picture } from './picture';
import { type Label, nameWithin, placeWithin } from './placing';
import { textBeside } from './placing-beside';
import { facing } from './view';

/** The texts of a picture. */
export interface Texts {
  /** Names on the faces, and beside the block where a face has no room. */
  readonly names: readonly Label[];
  /** Names of what stands high. */
  readonly highTexts: readonly Label[];
}

/** A face seen at a flatter angle has no name. */
const FLATTEST = 0.12;

/** Names on faces first, then what stands high, then the names that found no room. */
export function textsIn({ stage, faces, highs, datum, room }: Picture): Texts {
  const { block, eye } = stage;
  const taken = [...room.taken, ...(datum ? shapesOf(datum) : [])];
  const beside = (text: string, targets: readonly Point[]): Label[] => {
    const label = textBeside(text, targets, { ...room, taken });
    if (label === undefined) return [];
    taken.push(label.box, ...(label.leader ? [label.leader] : []));
    return [label];
  };
  const onFaces = { ...room, taken: [...taken, ...room.marks] };
  const named = faces
    .filter(({ face }) => facing(block, face, eye) > FLATTEST)
    .map(({ face, shape }) => ({
      name: faceLabel(face),
      within: nameWithin(faceLabel(face), shape, onFaces),
      target: placeWithin(shape, onFaces),
    }));
  taken.push(...named.flatMap(({ within }) => (within ? [within.box] : [])));
  const highTexts = highs.flatMap(({ text, targets }) => beside(text, targets));
  const names = named.flatMap(({ name, within, target }) =>
    within ? [within] : beside(name, [target]),
  );
  return { names, highTexts };
}

function shapesOf({ box, triangle, leader }: DatumMark): readonly Shape[] {
  return [box, hullOf([...triangle, ...leader])];
}
