import type { Block } from '../part/block';
import { outwardNormal } from '../part/faces';
import type { Requirement } from '../part/requirement';
import type { InstrumentFigures, Kit } from '../readings/kit';
import type {
  ColumnReading,
  MicrometerReading,
  OverTheTopReading,
  Reading,
} from '../readings/reading';
import { type FormPoint, formPointsOf } from '../zones/zone-with-form';

/**
 * The points where `readings` show form that counts for `requirement`, as `formPointsOf`, but that
 * traverses and grids which repeat each other are taken for one: at each place the mean of all. Each by
 * itself they would put noise beside noise, and every further seating would only widen the zone.
 */
export function formRead(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly FormPoint[] {
  const placings = groupedBy(readings.filter(isOfForm), placingOf);
  const repeats = groupedBy(placings, repeatOf);
  return repeats.flatMap((alike) => {
    const places = groupedBy(alike.flat(), placeOf);
    // One standard uncertainty for all of them: that of the place read least often.
    const times = Math.min(...places.map(({ length }) => length));
    const means = places.map((place) => meanOf(place, times));
    return formPointsOf(requirement, means, block, ofMeans(kit, times));
  });
}

type OfForm = ColumnReading | OverTheTopReading | MicrometerReading;

function isOfForm(reading: Reading): reading is OfForm {
  const { kind } = reading;
  return kind === 'column' || kind === 'over the top' || kind === 'micrometer';
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
function meanOf(alike: readonly OfForm[], times: number): OfForm {
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
function ofMeans<K extends InstrumentFigures>(figures: K, times: number): K {
  const narrowed = OWN_DOUBTS.flatMap((item) => {
    const doubt = figures[item];
    return doubt === undefined ? [] : [[item, doubt / Math.sqrt(times)] as const];
  });
  return { ...figures, ...Object.fromEntries(narrowed) };
}

function groupedBy<T>(all: readonly T[], nameOf: (one: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const group = groups.get(nameOf(one));
    if (group === undefined) groups.set(nameOf(one), [one]);
    else group.push(one);
  }
  return [...groups.values()];
}
