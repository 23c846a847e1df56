import type { IndividualsChart } from './control-chart';

/** What a rule found: the readings at `places`, from 0, the last of which gave the signal. */
export interface RunSignal {
  readonly rule: RunRule;
  readonly places: readonly number[];
}

/**
 * - beyond the limits: one reading;
 * - two of three, four of five: so many of the last readings beyond two, or one, thirds of the way
 *   to the limit on one side;
 * - eight on one side: of the centre, in a row;
 * - six in a row: each higher than the one before, or each lower.
 */
export type RunRule =
  | 'beyond the limits'
  | 'two of three'
  | 'four of five'
  | 'eight on one side'
  | 'six in a row';

/** So many of the last readings beyond so many thirds of the way from the centre to the limit. */
const ZONES = [
  { rule: 'beyond the limits', enough: 1, among: 1, thirds: 3 },
  { rule: 'two of three', enough: 2, among: 3, thirds: 2 },
  { rule: 'four of five', enough: 4, among: 5, thirds: 1 },
  { rule: 'eight on one side', enough: 8, among: 8, thirds: 0 },
] as const;

const TREND = 6;

/**
 * What the rules for 'out of control' find in `readings`, in the order they were taken: the zone
 * rules of the Western Electric Company and the rule for a trend, as NIST/SEMATECH e-Handbook of
 * Statistical Methods, 6.3.2, has them. Each signal is given where it arises; a run that goes on
 * gives one at every further reading.
 *
 * @throws RangeError where a reading is not finite.
 */
export function runSignals(
  readings: readonly number[],
  { centre, upper }: Pick<IndividualsChart, 'centre' | 'upper'>,
): readonly RunSignal[] {
  if (!readings.every(Number.isFinite)) throw new RangeError('A reading is not finite');
  const third = (upper - centre) / 3;
  return readings.flatMap((_, last) => [
    ...ZONES.flatMap(({ rule, enough, among, thirds }) =>
      [1, -1].flatMap((side) => {
        const isBeyond = (place: number) => side * (readings[place]! - centre) > thirds * third;
        const places = lastPlaces(last, among).filter(isBeyond);
        return places.length >= enough && isBeyond(last) ? [{ rule, places }] : [];
      }),
    ),
    ...trendAt(readings, last),
  ]);
}

/** The last `count` places up to `last`, as far as there are so many. */
function lastPlaces(last: number, count: number): readonly number[] {
  const first = Math.max(0, last - count + 1);
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}

function trendAt(readings: readonly number[], last: number): readonly RunSignal[] {
  const places = lastPlaces(last, TREND);
  if (places.length < TREND) return [];
  const steps = places.slice(1).map((place) => Math.sign(readings[place]! - readings[place - 1]!));
  const isTrend = steps[0] !== 0 && steps.every((step) => step === steps[0]);
  return isTrend ? [{ rule: 'six in a row', places }] : [];
}
