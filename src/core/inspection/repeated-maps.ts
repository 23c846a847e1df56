import { groupedBy } from '../grouped-by';
import { outwardNormal } from '../part/faces';
import type { InstrumentFigures } from '../readings/kit';
import type {
  ColumnReading,
  FaceMapReading,
  MicrometerReading,
  OverTheTopReading,
} from '../readings/reading';

/** A reading that shows form along with others of its placing. */
export type OfForm = ColumnReading | OverTheTopReading | FaceMapReading | MicrometerReading;

/** Traverses or maps that repeat each other, taken for one. */
export interface RepeatedMap<R extends OfForm> {
  /** At each place the mean of all readings there, its instrument's doubt that of such a mean. */
  readonly means: readonly R[];
  /** One number of readings for all places: that of the place read least often. */
  readonly times: number;
}

/** `readings` by placing, those placings that repeat each other as one. */
export function repeatedMaps<R extends OfForm>(readings: readonly R[]): readonly RepeatedMap<R>[] {
  const placings = groupedBy(readings, placingOf).values();
  return [...groupedBy(placings, repeatOf).values()].map((alike) => {
    const places = [...groupedBy(alike.flat(), placeOf).values()];
    const times = Math.min(...places.map(({ length }) => length));
    return { means: places.map((place) => meanOf(place, times)), times };
  });
}

/** What the reading was taken along with: all micrometer readings through one pair of faces start from one size. */
function placingOf(reading: OfForm): string {
  return reading.kind === 'micrometer'
    ? `${reading.kind} ${outwardNormal(reading.face).axis}`
    : `${reading.kind} ${reading.placing}`;
}

function placeOf(reading: OfForm): string {
  if (reading.kind === 'column') return `${reading.height}`;
  const { x, y, z } = reading.point;
  return `${x} ${y} ${z}`;
}

/** Placings with the same name repeat each other: of one instrument, over the same places of the same face. */
function repeatOf(placing: readonly OfForm[]): string {
  const first = placing[0]!;
  if (first.kind === 'micrometer') return placingOf(first);
  const places = [...new Set(placing.map(placeOf))].sort().join(', ');
  const figures = Object.values(first.instrument ?? {}).join(' ');
  const by = first.kind === 'column' ? `${first.column} on ${first.base}` : first.kind + figures;
  return `${by}: ${first.face} at ${places}`;
}

/** One reading for all at one place, its doubt as of a mean of so many. */
function meanOf<R extends OfForm>(alike: readonly R[], times: number): R {
  const { instrument } = alike[0]!;
  const first = { ...alike[0]!, ...(instrument && { instrument: ofMeans(instrument, times) }) };
  const sum = alike.reduce((total, reading) => total + shownBy(reading), 0);
  const mean = sum / alike.length;
  return first.kind === 'micrometer' ? { ...first, departure: mean } : { ...first, value: mean };
}

function shownBy(reading: OfForm): number {
  return reading.kind === 'micrometer' ? reading.departure : reading.value;
}

/** What makes a single reading doubtful by itself. */
const OWN_DOUBTS = [
  'indicatorResolution',
  'indicatorError',
  'micrometerResolution',
  'micrometerError',
] as const;

/** The same with the doubt of means of so many readings (GUM 4.2.3: s/√n). */
export function ofMeans<K extends InstrumentFigures>(figures: K, times: number): K {
  const narrowed = OWN_DOUBTS.flatMap((item) => {
    const doubt = figures[item];
    return doubt === undefined ? [] : [[item, doubt / Math.sqrt(times)] as const];
  });
  return { ...figures, ...Object.fromEntries(narrowed) };
}
