import { type Block, depthBehind } from '../core/part/block';
import { type Face, oppositeFace } from '../core/part/faces';
import { millimetresForDrawing } from './for-drawing';
import type { NewId } from './new-id';
import type {
  ColumnPlacing,
  ColumnSetup,
  NoseComparatorSetup,
  NosePlacing,
  SetupEntry,
} from './setup-entry';
import { blank, isBlank, type TypedLength } from './typed-length';

/*
 * A comparator or column can be kept as it is while the block is turned on all four sides of a
 * section: the four corners sum to 360°, so that its zero or lean falls out by itself.
 */

/** A setup under which the block stands upright. */
export type StandingSetup = NoseComparatorSetup | ColumnSetup;

/** True for a comparator or column, where the block is seated to be read from the side. */
export function isStanding(setup: SetupEntry): setup is StandingSetup {
  return setup.kind === 'nose comparator' || setup.kind === 'column';
}

/** What the block stands on at one placing. */
export function baseOf(
  setup: { readonly base: Face },
  placing: { readonly base?: Face | undefined },
): Face {
  return placing.base ?? setup.base;
}

/** What a tap at `face` means while the block stands on `stand`: the first placing there to be read still, or else the last. */
export function placingMeant<P extends { readonly face: Face; readonly base?: Face | undefined }>(
  setup: { readonly base: Face; readonly placings: readonly P[] },
  { face, stand }: { readonly face: Face; readonly stand: Face },
  isToRead: (placing: P) => boolean,
): P | undefined {
  const there = setup.placings.filter((one) => one.face === face && baseOf(setup, one) === stand);
  return there.find(isToRead) ?? there.at(-1);
}

/** True where the block is turned on all four sides of a section. */
export function isFourSided(setup: StandingSetup): boolean {
  return setup.placings.some((placing) => baseOf(setup, placing) !== setup.base);
}

/** The setup to be turned on all four sides: the corners of the section that it lacks, added. */
export function onAllFourSides<S extends StandingSetup>(setup: S, newId: NewId): S {
  const { base, faces } = setup;
  const round = [base, faces[0], oppositeFace(base), faces[1]];
  const corners = round.map((stand, index) => ({ stand, face: round[(index + 1) % 4] as Face }));
  const missing = corners.filter(({ stand, face }) => !hasCorner(setup, stand, face));
  const added = missing.map(({ stand, face }) => ({
    ...{ id: newId(), face, base: stand },
    ...nothingRead(setup),
  }));
  return { ...setup, placings: [...setup.placings, ...added] };
}

/** True where the block is tall enough for the setup on whatever side it lies; so too while a height is not typed. */
export function fitsLyingDown(setup: StandingSetup, block: Block): boolean {
  const typed =
    setup.kind === 'column' ? setup.heights.map(({ height }) => height) : [setup.indicatorHeight];
  const height = Math.max(...typed.map((one) => millimetresForDrawing(one) ?? 0));
  return [setup.base, setup.faces[0]].every((face) => height <= depthBehind(block, face));
}

/** True where nothing has been read yet on any side but the first base. */
export function extraSidesAreEmpty(setup: StandingSetup): boolean {
  return setup.placings.every(
    (placing) => baseOf(setup, placing) === setup.base || shownAt(placing).every(isBlank),
  );
}

/** The setup with the block on its first base only. */
export function onTwoSides<S extends StandingSetup>(setup: S): S {
  const placings = setup.placings.filter((placing) => baseOf(setup, placing) === setup.base);
  return { ...setup, placings };
}

/** An angle of the section is the same read from either of its faces. */
function hasCorner(setup: StandingSetup, one: Face, other: Face): boolean {
  return setup.placings.some((placing) => {
    const corner = [baseOf(setup, placing), placing.face];
    return corner.includes(one) && corner.includes(other);
  });
}

/** What a new placing shows, in the unit of the others. */
function nothingRead(setup: StandingSetup) {
  const unit = setup.placings.flatMap(shownAt)[0]?.unit ?? 'µm';
  return setup.kind === 'column'
    ? { readings: Object.fromEntries(setup.heights.map(({ id }) => [id, blank(unit)])) }
    : { reading: blank(unit) };
}

function shownAt(placing: NosePlacing | ColumnPlacing): readonly TypedLength[] {
  return 'reading' in placing ? [placing.reading] : Object.values(placing.readings);
}
