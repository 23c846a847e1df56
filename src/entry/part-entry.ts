import { type Axis, FACES, type Face, oppositeFace, pairsAround } from '../core/part/faces';
import type { NewId } from './new-id';
import type { TypedRoughness } from './roughness';
import { blank, isBlank, type TypedLength } from './typed-length';

/** A line of the drawing as typed. */
export interface RequirementEntry {
  readonly id: string;
  readonly face: Face;
  readonly datum: Face;
  readonly tolerance: TypedLength;
}

/** A face that is to be flat, as typed. */
export type FlatnessEntry = Omit<RequirementEntry, 'datum'>;

/** The limits of a size as typed: departures from the nominal one, with their signs. */
export interface SizeLimitsEntry {
  readonly lower: TypedLength;
  readonly upper: TypedLength;
}

/** A part as typed. */
export interface PartEntry {
  readonly name: string;
  readonly job: string;
  readonly material: string;
  readonly size: Readonly<Record<Axis, TypedLength>>;
  /** Limits of the sizes, once any has been typed. */
  readonly sizeLimits?: Readonly<Partial<Record<Axis, SizeLimitsEntry>>>;
  /** The finest Ra that the drawing asks of the faces, once it has been typed. */
  readonly finish?: TypedRoughness;
  /** The face that it stands on as datum A. */
  readonly datum: Face;
  readonly requirements: readonly RequirementEntry[];
  /** Faces that are to be flat, once any has been asked for. */
  readonly flatness?: readonly FlatnessEntry[];
  /** Faces that are finished and must not be worked. */
  readonly finished: readonly Face[];
}

/** The face that a new part stands on. */
const STANDS_ON: Face = 'bottom';

/** A new part: nothing typed, standing on its bottom. */
export function blankPart(unit: 'mm' | 'in'): PartEntry {
  return {
    name: '',
    job: '',
    material: '',
    size: { x: blank(unit), y: blank(unit), z: blank(unit) },
    datum: STANDS_ON,
    requirements: [],
    finished: [],
  };
}

/** True while nothing is typed or asked: what was begun as a new part and left again. */
export function isUntouched({
  name,
  job,
  material,
  size,
  datum,
  requirements,
  finished,
  ...more
}: PartEntry): boolean {
  return (
    datum === STANDS_ON &&
    [name, job, material].every((text) => text.trim() === '') &&
    Object.values(size).every(isBlank) &&
    [requirements, finished, more.flatness ?? []].every(({ length }) => length === 0) &&
    more.sizeLimits === undefined &&
    more.finish === undefined
  );
}

/** A requirement on the next side round the datum that nothing is asked of yet, with the last tolerance again. */
export function nextRequirement(entry: PartEntry, newId: NewId): RequirementEntry {
  const { datum, requirements, size } = entry;
  const sides = [...pairsAround(datum).flat(), oppositeFace(datum)];
  const free = sides.find((side) => requirements.every(({ face }) => face !== side));
  const tolerance = requirements.at(-1)?.tolerance ?? blank(size.x.unit);
  return { id: newId(), face: free ?? oppositeFace(datum), datum, tolerance };
}

/** Any line of the drawing as typed; flatness has no datum. */
export type LineEntry = FlatnessEntry & Partial<Pick<RequirementEntry, 'datum'>>;

/** All that the drawing asks, flatness last. */
export function linesOf({
  requirements,
  flatness = [],
}: Pick<PartEntry, 'requirements' | 'flatness'>): readonly LineEntry[] {
  return [...requirements, ...flatness];
}

/** Flatness of the datum first, then of any face that none is asked of yet, with the last tolerance again. */
export function nextFlatness(
  { datum, flatness = [], size }: PartEntry,
  newId: NewId,
): FlatnessEntry {
  const faces = [datum, ...FACES];
  const free = faces.find((one) => flatness.every(({ face }) => face !== one));
  const tolerance = flatness.at(-1)?.tolerance ?? blank(size.x.unit);
  return { id: newId(), face: free ?? datum, tolerance };
}
