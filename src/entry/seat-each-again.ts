import { type Face, outwardNormal } from '../core/part/faces';
import type { Asked } from '../core/part/requirement';
import { baseOf, isFourSided, isStanding, type StandingSetup } from './four-sides';
import type { NewId } from './new-id';
import { isLastSeating, passedOverAgain } from './over-face-seatings';
import { seatAgain, traverseAgain } from './placings';
import type { OverFaceSetup, SetupEntry } from './setup-entry';
import { isBlank } from './typed-length';

/** The sides that one more round of seatings reads: of two sides on one base, or of four. */
export type SidesToSeat = readonly [Face, Face] | 'all four' | undefined;

/**
 * Which sides are to be lifted, seated and read again to know `asked` better: undefined where no single
 * pair or section tells it.
 */
export function sidesToSeat(setups: readonly SetupEntry[], asked: Asked): SidesToSeat {
  const [first, ...others] = setups.filter((setup) => tells(setup, asked));
  if (first === undefined || others.length > 0 || !isStanding(first)) return undefined;
  return isFourSided(first) ? 'all four' : first.faces;
}

/**
 * The setups with each side to be lifted, seated and read once more, of those that tell `asked`, or of
 * all that the block stands for. A side whose last seating is still to be read has none added.
 */
export function seatEachAgain(
  setups: readonly SetupEntry[],
  newId: NewId,
  asked?: Asked,
): readonly SetupEntry[] {
  const telling = setups.filter((setup) => asked === undefined || tells(setup, asked));
  return telling.reduce((now, setup) => withOneMore(now, setup, newId), setups);
}

/** True where the block is seated for the setup, and what it reads bears on `asked`. */
function tells(setup: SetupEntry, { face, datum }: Asked): boolean {
  if (setup.kind === 'over the top') return setup.faces.includes(face) && face !== datum;
  if (!isStanding(setup) || datum === undefined) return false;
  const section = [setup.base, setup.faces[0]].map(axisOf);
  return section.includes(axisOf(face)) && section.includes(axisOf(datum));
}

function axisOf(face: Face) {
  return outwardNormal(face).axis;
}

function withOneMore(
  setups: readonly SetupEntry[],
  setup: SetupEntry,
  newId: NewId,
): readonly SetupEntry[] {
  if (setup.kind === 'over the top') return overTheTopOnceMore(setups, setup, newId);
  if (!isStanding(setup)) return setups;
  const again = sidesOnceMore(setup, newId);
  return again === setup ? setups : setups.map((one) => (one === setup ? again : one));
}

function overTheTopOnceMore(
  setups: readonly SetupEntry[],
  setup: OverFaceSetup,
  newId: NewId,
): readonly SetupEntry[] {
  const isToRead = setup.places.every(({ reading }) => isBlank(reading));
  return isToRead || !isLastSeating(setups, setup) ? setups : passedOverAgain(setups, setup, newId);
}

function sidesOnceMore(setup: StandingSetup, newId: NewId): StandingSetup {
  const { placings }: { placings: readonly StandingSetup['placings'][number][] } = setup;
  const sideOf = (placing: StandingSetup['placings'][number]) =>
    `${placing.face} ${baseOf(setup, placing)}`;
  const lastOfEach = new Map(placings.map((placing) => [sideOf(placing), placing]));
  return [...lastOfEach.values()]
    .filter((placing) => !shownAt(placing).every(isBlank))
    .reduce<StandingSetup>(
      (now, { id }) =>
        now.kind === 'column' ? traverseAgain(now, id, newId) : seatAgain(now, id, newId),
      setup,
    );
}

function shownAt(placing: StandingSetup['placings'][number]) {
  return 'reading' in placing ? [placing.reading] : Object.values(placing.readings);
}
