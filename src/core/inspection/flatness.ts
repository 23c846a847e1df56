import type { Term } from '../adjustment/adjustment';
import { type Contribution, contributionsTo } from '../adjustment/contributions';
import type { Block } from '../part/block';
import { axesInFace } from '../part/faces';
import type { Part } from '../part/part';
import type { FlatnessRequirement } from '../part/requirement';
import { bowOfWarmth, leverDoubt, mapDoubt } from '../readings/doubts';
import { combined, type Equation } from '../readings/equation';
import { type Kit, kitFor } from '../readings/kit';
import type { FaceMapReading, Reading } from '../readings/reading';
import { leverMovement } from '../statistics/lever-angle';
import { decide, type Verdict } from '../verdict/conformity';
import { probabilityOfFlatness, type WideMap } from '../verdict/flatness-conformity';
import { minimumZonePlane } from '../zones/form/flatness';
import type { MinimumZone } from '../zones/form/minimum-zone-fit';
import type { FormSpan } from '../zones/zone-with-form';
import { type LonePlace, lonePlace } from './lone-place';
import { ofMeans, type RepeatedMap, repeatedMaps } from './repeated-maps';

/** What the readings say of one face that is to be flat. */
export type FlatnessFinding =
  | FixedFlatness
  | {
      readonly fixed: false;
      readonly requirement: FlatnessRequirement;
      readonly lack: MapLack;
    };

/** The flatness of a face from the widest of its maps: the face is at least as far from flat as that. */
export interface FixedFlatness {
  readonly fixed: true;
  readonly requirement: FlatnessRequirement;
  readonly zone: FlatnessZone;
  /** Probability that the face is flat within the tolerance, at the places read (JCGM 106). */
  readonly probability: number;
  readonly verdict: Verdict;
  /** Where it is wider than the tolerance: what is to be simulated before the probability is said. */
  readonly toSimulate?: WideMap;
  /** How many places that are planned are not read yet: the zone can only grow by them. */
  readonly unread: number;
  /** How many places the map has, and how much of the face they span along each of its axes. */
  readonly places: number;
  readonly spans: readonly FormSpan[];
  /** Maps that differ in their places or instrument; those that repeat each other count for one. */
  readonly maps: number;
  /** Ids of the readings that lie in the upper plane of the zone, whether it needs them to hold it or not. */
  readonly high: readonly string[];
  /** The reading without which all others lie much flatter, how flat, and how far it stands over them, µm: a slip looks so. */
  readonly lone?: Omit<LonePlace, 'index'> & { readonly reading: string };
}

/** The minimum zone planes (ISO 12781-1, MZPL) as a sum of the readings that hold them. */
export interface FlatnessZone {
  /** µm */
  readonly width: number;
  /** Standard uncertainty, µm, with the shares of those that hold the zone (GUM 5.1.2). */
  readonly standard: number;
  readonly degreesOfFreedom: number;
  readonly contributions: readonly Contribution[];
  readonly terms: readonly Term[];
}

/** Why the flatness of a face is not known, and whether an indicator over the top has shown its thickness. */
export type MapLack =
  | {
      readonly kind: 'no map' | 'few places' | 'on a line';
      readonly thickness: boolean;
    }
  | PlacesToRead;

/** Flat enough as far as it was read, which the places still to be read may change. */
export interface PlacesToRead {
  readonly kind: 'places to read';
  /** Places read so far, and the width of the zone over them, µm. */
  readonly places: number;
  readonly width: number;
  readonly unread: number;
}

/** A place of a map that is planned and not read yet. */
export type PlannedPlace = Pick<FaceMapReading, 'face' | 'point'>;

/** Any three places lie in a plane. */
const LEAST_PLACES = 4;

/**
 * The finding for every face of the part that is to be flat. More places only widen a zone: with some of
 * the `planned` ones still to be read a face may be out already, but is not in yet.
 */
export function flatnessFindings(
  part: Part,
  readings: readonly Reading[],
  kit: Kit,
  level: number,
  planned: readonly PlannedPlace[] = [],
): readonly FlatnessFinding[] {
  return (part.flatness ?? []).map((requirement) => {
    const { face, tolerance } = requirement;
    const read = readings.filter((one) => isMapOf(one, face));
    const unread = planned.filter((place) => place.face === face && !isRead(place, read)).length;
    const maps = repeatedMaps(read);
    const zones = maps.flatMap((map) => zoneOf(map, part.block, kit) ?? []);
    const [widest] = zones.sort((a, b) => b.zone.width - a.zone.width);
    if (widest === undefined) {
      return { fixed: false, requirement, lack: lackOf(requirement, maps, readings) };
    }
    const { zone, wide, ...seen } = widest;
    if (unread > 0 && zone.width <= tolerance) {
      const { places } = seen;
      const lack = { kind: 'places to read', places, width: zone.width, unread } as const;
      return { fixed: false, requirement, lack };
    }
    const probability = probabilityOfFlatness(zone.width, zone.standard, tolerance);
    return {
      ...{ fixed: true, requirement, zone, probability, verdict: decide(probability, level) },
      ...(zone.width > tolerance && { toSimulate: { ...wide, tolerance } }),
      ...{ ...seen, unread, maps: zones.length },
    };
  });
}

/** `finding` with what came of its simulation (`wideMapDraws`). */
export function settledFlatness(
  { toSimulate: _, ...finding }: FixedFlatness,
  simulated: number,
  level: number,
): FixedFlatness {
  const probability = Math.max(finding.probability, simulated);
  return { ...finding, probability, verdict: decide(probability, level) };
}

function isMapOf(reading: Reading, face: FlatnessRequirement['face']): reading is FaceMapReading {
  return reading.kind === 'face map' && reading.face === face;
}

function isRead({ point }: PlannedPlace, readings: readonly FaceMapReading[]): boolean {
  const { x, y, z } = point;
  return readings.some(({ point: at }) => at.x === x && at.y === y && at.z === z);
}

function lackOf(
  { face }: FlatnessRequirement,
  maps: readonly RepeatedMap<FaceMapReading>[],
  readings: readonly Reading[],
): MapLack {
  const most = Math.max(0, ...maps.map(({ means }) => means.length));
  const kind = most === 0 ? 'no map' : most < LEAST_PLACES ? 'few places' : 'on a line';
  const thickness = readings.some((one) => one.kind === 'over the top' && one.face === face);
  return { kind, thickness };
}

/** Parts of the width of a zone below which a place under its upper plane is rounding. */
const ROUNDING = 1e-9;

/** The zone of one map, or undefined where its places do not spread over the face. */
function zoneOf({ means, times }: RepeatedMap<FaceMapReading>, block: Block, kit: Kit) {
  const [first] = means;
  if (first === undefined || means.length < LEAST_PLACES) return undefined;
  const { face } = first;
  const [u, v] = axesInFace(face);
  const moved = means.map((one) => leverMovement(one.value, kitFor(one, kit).leverAngle));
  const places = means.map(({ point }) => ({ u: point[u], v: point[v] }));
  const fit = minimumZonePlane(
    places.map((place, index) => ({ ...place, deviation: moved[index]! })),
  );
  if (fit.spread !== 'face') return undefined;
  const doubts = means.map((one) => doubtOf(one, block, kitFor(one, ofMeans(kit, times))));
  const gains = gainsOf(fit, means.length);
  const contributions = contributionsTo(gains, doubts, () => 0);
  const held = means.flatMap(({ id: reading }, index) => {
    const weight = gains[index]!;
    return weight === 0 ? [] : [{ reading, value: moved[index]!, weight }];
  });
  const standard = Math.hypot(...contributions.map((one) => one.standard));
  const points = places.map((place, index) => ({ ...place, deviation: fit.residuals[index]! }));
  const lone = lonePlace(points, fit, standard);
  const top = Math.max(...fit.residuals) - ROUNDING * fit.width;
  return {
    zone: {
      width: fit.width,
      standard,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      contributions,
      terms: held,
    },
    wide: {
      points,
      standards: doubts.map(({ components }) => combined(components)),
      width: fit.width,
    },
    places: means.length,
    spans: [u, v].map((axis) => {
      const along = means.map(({ point }) => point[axis]);
      return { read: Math.max(...along) - Math.min(...along), face: block.size[axis] };
    }),
    high: means.flatMap(({ id }, index) => (fit.residuals[index]! >= top ? [id] : [])),
    ...(lone && { lone: loneReading(lone, means) }),
  };
}

function loneReading({ index, ...lone }: LonePlace, means: readonly FaceMapReading[]) {
  return { reading: means[index]!.id, ...lone };
}

/** What each reading does to the width: its share of the hold, - where it holds the zone from below. */
function gainsOf({ upper, lower }: MinimumZone, count: number): Float64Array {
  const gains = new Float64Array(count);
  for (const { index, share } of upper) gains[index] = share;
  for (const { index, share } of lower) gains[index] = -share;
  return gains;
}

function doubtOf(
  { face, point, placing, value }: FaceMapReading,
  block: Block,
  kit: Kit,
): Pick<Equation, 'components' | 'shared'> {
  const shift = bowOfWarmth(face, point, block, kit);
  return {
    components: mapDoubt(face, block, kit),
    shared: [
      ...leverDoubt(placing, value, kit),
      { cause: 'warmth', source: 'warmth through the face', shift },
    ],
  };
}
