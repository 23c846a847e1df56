import type { Face } from '../core/part/faces';
import { sitReading } from '../core/readings/unknowns';
import { baseOf, isFourSided, isStanding, type StandingSetup } from './four-sides';
import { seatingOf } from './over-face-seatings';
import { isTurned } from './read-with';
import type { ColumnPlacing, ColumnSetup, NoseComparatorSetup, SetupEntry } from './setup-entry';

/**
 * What each reading is called, by its id: 'Right side, seating 2', 'Left at 80'.
 *
 * @param among all that its base is to be told from, such as the setups of another inspection beside.
 */
export function readingNames(
  setups: readonly SetupEntry[],
  among: readonly SetupEntry[] = setups,
): ReadonlyMap<string, string> {
  return new Map(setups.flatMap((setup) => namesIn(setup, setups, among)));
}

/** The same for where their signs are shown: those whose indicator counts the other way say that the sign is turned. */
export function namesWithSign(setups: readonly SetupEntry[]): ReadonlyMap<string, string> {
  return new Map(
    setups.flatMap((setup) =>
      namesIn(setup, setups, setups).map(
        ([id, name]) => [id, isTurned(setup) ? `${name} (sign turned)` : name] as const,
      ),
    ),
  );
}

type Names = readonly (readonly [string, string])[];

function namesIn(
  setup: SetupEntry,
  setups: readonly SetupEntry[],
  among: readonly SetupEntry[],
): Names {
  switch (setup.kind) {
    case 'nose comparator':
      return setup.placings.map((placing, index) => [placing.id, noseName(setup, index, among)]);
    case 'column':
      return setup.placings.flatMap((placing): Names => {
        const name = traverseName(setup, placing, among);
        const rows = setup.heights.map(
          ({ id }, row) => [`${placing.id} ${id}`, `${name} at ${heightName(setup, row)}`] as const,
        );
        return [...rows, [sitReading(placing.id), `${name}: how the block sat`]];
      });
    case 'micrometer':
      return setup.places.map(({ id }, index) => [
        id,
        `Micrometer ${setup.faces.join(' to ')}, place ${index + 1}`,
      ]);
    case 'over the top':
    case 'face map': {
      // A face may have both: a place of the map is not to be taken for the same one over the plate.
      const [face] = setup.faces;
      const seating = seatingOf(setups, setup);
      const way = setup.kind === 'over the top' ? `Over the ${face}` : label(face);
      const name = `${way}${seating > 1 ? `, seating ${seating}` : ''}`;
      const places: Names = setup.places.map(({ id }, index) => [
        id,
        `${name}, place ${index + 1}`,
      ]);
      return [...places, [sitReading(setup.id), `${name}: how the block sat`]];
    }
    case 'assumed parallel':
      return [[setup.id, `${setup.faces.join(' and ')} taken as parallel`]];
  }
}

function noseName(
  setup: NoseComparatorSetup,
  index: number,
  setups: readonly SetupEntry[],
): string {
  const placing = setup.placings[index];
  if (placing === undefined) throw new RangeError('There is no such placing');
  const alike = (other: typeof placing) =>
    other.face === placing.face && baseOf(setup, other) === baseOf(setup, placing);
  const seating = setup.placings.slice(0, index + 1).filter(alike).length;
  return `${label(placing.face)} side${standIn(setup, placing, setups)}${seating > 1 ? `, seating ${seating}` : ''}`;
}

/**
 * A traverse of a column by its side, by what it stands on, and by its seating: 'Right, seating 2', 'Top on right'.
 *
 * @param setups all that it is to be told from.
 */
export function traverseName(
  setup: ColumnSetup,
  placing: ColumnPlacing,
  setups: readonly SetupEntry[] = [setup],
): string {
  const alike = setup.placings.filter(
    (other) => other.face === placing.face && baseOf(setup, other) === baseOf(setup, placing),
  );
  const seating = alike.indexOf(placing) + 1;
  return `${label(placing.face)}${standIn(setup, placing, setups)}${seating > 1 ? `, seating ${seating}` : ''}`;
}

/** The same for every traverse, by the id of its placing. */
export function traverseNames(setups: readonly SetupEntry[]): ReadonlyMap<string, string> {
  const columns = setups.filter((setup): setup is ColumnSetup => setup.kind === 'column');
  return new Map(
    columns.flatMap((setup) =>
      setup.placings.map((placing) => [placing.id, traverseName(setup, placing, setups)] as const),
    ),
  );
}

/** What a height of a column is called: as it was typed, or by its number until then. */
export function heightName({ heights }: ColumnSetup, row: number): string {
  return heights[row]?.height.text.trim() || `height ${row + 1}`;
}

/** What the block stands on, where that is not always the same as this face is read. */
function standIn(
  setup: StandingSetup,
  placing: { readonly face: Face; readonly base?: Face },
  setups: readonly SetupEntry[],
): string {
  const base = baseOf(setup, placing);
  const standsOtherwise = (other: StandingSetup) =>
    other.kind === setup.kind &&
    other.placings.some(
      (one) => one.face === placing.face && (isFourSided(other) || baseOf(other, one) !== base),
    );
  const isToTell = isFourSided(setup) || setups.filter(isStanding).some(standsOtherwise);
  return isToTell ? ` on ${base}` : '';
}

/** The faces of a comparator, and what they stand on where another of `among` reads them from another base. */
export function pairWithBase(setup: NoseComparatorSetup, among: readonly SetupEntry[]): string {
  const { faces, base } = setup;
  const pair = faces.join(' and ');
  if (isFourSided(setup)) return pair;
  const others = among.filter((other) => isStanding(other) && !isFourSided(other));
  return `${pair}${standIn(setup, { face: faces[0], base }, others)}`;
}

function label(face: Face): string {
  return face.charAt(0).toUpperCase() + face.slice(1);
}
