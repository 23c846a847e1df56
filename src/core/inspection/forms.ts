import { groupedBy } from '../grouped-by';
import { type Axis, axesInFace, type Face, outwardNormal } from '../part/faces';
import { type Kit, kitFor } from '../readings/kit';
import type {
  ColumnReading,
  FaceMapReading,
  MicrometerReading,
  OverTheTopReading,
  Reading,
} from '../readings/reading';
import { leverMovement } from '../statistics/lever-angle';
import { flatness } from '../zones/form/flatness';
import { type Form, formOf } from '../zones/form/form-of';
import type { Contact, MinimumZone } from '../zones/form/minimum-zone-fit';
import type { Spread } from '../zones/form/places';
import { straightness } from '../zones/form/straightness';
import type { OfForm } from './repeated-maps';

/** A reading that holds a zone, with its part of the hold on its side. */
export interface HeldBy {
  readonly reading: string;
  /** µm, as the face moved the indicator. */
  readonly value: number;
  readonly share: number;
}

/** The form of one line or face. Widths are in µm. */
export interface FormAnswer {
  /** The placing that it was read at. */
  readonly placing: string;
  readonly face: Face;
  /** A line up the face, the face itself, or the thickness over the plate. */
  readonly of: 'line' | 'face' | 'thickness';
  /** Straightness or flatness by least squares (LSLI, LSPL) and as the minimum zone (MZLI, MZPL). */
  readonly leastSquares: number;
  readonly minimumZone: number;
  /** The readings that hold the minimum zone from above and below, with their shares: the width is Σ share·reading above less that below. */
  readonly upper: readonly HeldBy[];
  readonly lower: readonly HeldBy[];
  readonly spread: Spread;
  readonly form: Form;
  /** Axes that the form's u and v run along; a line has only the first. */
  readonly axes: readonly Axis[];
  /** Ids of the readings, in the order that the form counts them in. */
  readonly readings: readonly string[];
  /** Where each was read along the axes, mm from the block's middle; up from the base on a line. */
  readonly places: readonly { readonly u: number; readonly v?: number }[];
  /** How far each place stands over the lower plane of the minimum zone, µm: from 0 to its width. */
  readonly heights: readonly number[];
}

/** The least number of points that can be out of line, and out of a plane. */
const ENOUGH_ON_LINE = 3;
const ENOUGH_ON_FACE = 4;

/** The form of every traverse with three heights or more, and of every face read at four places or more. */
export function formAnswers(readings: readonly Reading[], kit: Kit): readonly FormAnswer[] {
  const moved = readings.flatMap((reading) => {
    if (!showsFormAlone(reading)) return [];
    const { leverAngle } = kitFor(reading, kit);
    return [{ ...reading, value: leverMovement(reading.value, leverAngle) }];
  });
  const placings = groupedBy(moved, ({ placing }) => placing);
  return [...placings.values()].flatMap((group) => {
    const traverse = group.filter((reading) => reading.kind === 'column');
    const places = group.filter((reading) => reading.kind !== 'column');
    return [...formOfTraverse(traverse), ...formOfPlaces(places)];
  });
}

function showsFormAlone(reading: Reading): reading is Exclude<OfForm, MicrometerReading> {
  return ['column', 'over the top', 'face map'].includes(reading.kind);
}

function formOfTraverse(traverse: readonly ColumnReading[]): readonly FormAnswer[] {
  const [first] = traverse;
  if (first === undefined || traverse.length < ENOUGH_ON_LINE) return [];
  const points = traverse.map(({ height, value }) => ({ u: height, deviation: value }));
  const { leastSquares, minimumZone } = straightness(points);
  return [
    {
      placing: first.placing,
      face: first.face,
      of: 'line',
      leastSquares: leastSquares.width,
      ...heldZone(minimumZone, traverse),
      spread: leastSquares.spread,
      form: formOf(points),
      axes: [outwardNormal(first.base).axis],
      readings: traverse.map(({ id }) => id),
      places: points.map(({ u }) => ({ u })),
    },
  ];
}

function formOfPlaces(
  places: readonly (OverTheTopReading | FaceMapReading)[],
): readonly FormAnswer[] {
  const [first] = places;
  if (first === undefined || places.length < ENOUGH_ON_FACE) return [];
  const axes = axesInFace(first.face);
  const points = places.map(({ point, value }) => ({
    u: point[axes[0]],
    v: point[axes[1]],
    deviation: value,
  }));
  const { leastSquares, minimumZone } = flatness(points);
  return [
    {
      placing: first.placing,
      face: first.face,
      of: first.kind === 'face map' ? 'face' : 'thickness',
      leastSquares: leastSquares.width,
      ...heldZone(minimumZone, places),
      spread: leastSquares.spread,
      form: formOf(points),
      axes,
      readings: places.map(({ id }) => id),
      places: points.map(({ u, v }) => ({ u, v })),
    },
  ];
}

/** The width of the zone, what holds it and how high all stands in it, in the order of `readings`. */
function heldZone(
  { width, upper, lower, residuals }: MinimumZone,
  readings: readonly { readonly id: string; readonly value: number }[],
): Pick<FormAnswer, 'minimumZone' | 'upper' | 'lower' | 'heights'> {
  const least = Math.min(...residuals);
  const held = ({ index, share }: Contact): HeldBy => {
    const { id, value } = readings[index]!;
    return { reading: id, value, share };
  };
  return {
    minimumZone: width,
    upper: upper.map(held),
    lower: lower.map(held),
    heights: Array.from(residuals, (residual) => residual - least),
  };
}
