import type { Face } from '../core/part/faces';
import { baseOf, type StandingSetup } from './four-sides';
import type { NewId } from './new-id';
import { readAgain } from './new-setup';
import type { ColumnPlacing, NosePlacing, OverFaceSetup, SetupEntry } from './setup-entry';

/**
 * The setups of an inspection to be read again in a new one, what the instruments showed being empty. Each side
 * and face is seated once: whether it takes another seating is told by what is read. `worked` as in `readAgain`.
 */
export function allReadAgain(
  setups: readonly SetupEntry[],
  newId: NewId,
  worked?: Face,
): readonly SetupEntry[] {
  return firstSeatings(setups).flatMap((setup) => readAgain(setup, newId, worked) ?? []);
}

function firstSeatings(setups: readonly SetupEntry[]): readonly SetupEntry[] {
  const once = setups.map(seatedOnce);
  const overFaces = firstOfEach(once.filter(isOverFace), passedOver);
  return once.filter((setup) => !isOverFace(setup) || overFaces.includes(setup));
}

function seatedOnce(setup: SetupEntry): SetupEntry {
  switch (setup.kind) {
    case 'nose comparator':
      return { ...setup, placings: firstOfEach(setup.placings, sideUnder(setup)) };
    case 'column':
      return { ...setup, placings: firstOfEach(setup.placings, sideUnder(setup)) };
    default:
      return setup;
  }
}

/** Names the side that is read at a placing, and what the block stands on. */
function sideUnder(setup: StandingSetup) {
  return (placing: NosePlacing | ColumnPlacing) => `${placing.face} ${baseOf(setup, placing)}`;
}

function isOverFace(setup: SetupEntry): setup is OverFaceSetup {
  return setup.kind === 'over the top' || setup.kind === 'face map';
}

/** How and where a face is passed over. Other places are no second seating, but more of the face. */
function passedOver({ kind, faces, places }: OverFaceSetup): string {
  const where = places.flatMap(({ up, across }) => [up, across]);
  return [kind, ...faces, ...where.map(({ text, unit }) => `${text} ${unit}`)].join(' · ');
}

/** Those that come first of all with the same name. */
function firstOfEach<T>(all: readonly T[], nameOf: (one: T) => string): readonly T[] {
  const names = all.map(nameOf);
  return all.filter((_, index) => names.indexOf(names[index] ?? '') === index);
}
