import type { KnownPass } from './pass';
import { type Logarithms, logarithmsOf } from './posterior-logarithm';
import type { RatePrior } from './prior';

/** Where the posterior lies: ends of m = ln(typical rate) and of y = ln(scale of the scatter). */
export interface Box {
  readonly middle: Ends;
  readonly logScale: Ends;
}

export type Ends = readonly [low: number, high: number];

/** What lies further below the greatest logarithm of the posterior than this is left out: 4·10⁻⁶. */
const DEPTH = 12.5;

/** Standard deviations of the prior, and scales of its greatest scatter, to begin with. */
const BEYOND = 6;

/** Each place lies so many times nearer to the best one than the next, in the first rounds. */
const NEARER = 3;

/** The nearest is then 1/700 of the way to the end of the box. */
const PLACES_EACH_WAY = 7;

/** Rounds that look near and far at once, before the box is only trimmed. */
const SEARCHING_ROUNDS = 2;

const EVEN_MIDDLES = 9;

const SCALES = 5;

/** A box that would shrink by less than this is near enough. */
const WORTH_SHRINKING = 0.7;

const MOST_ROUNDS = 12;

/** The box of a round, and the best place in it so far. */
interface Search {
  readonly box: Box;
  readonly best: number;
}

/**
 * The box that holds nearly all of the posterior: all that the prior allows, drawn together. The
 * peak may be a thousandth of that wide, and the narrower the scatter, the narrower; so the first
 * rounds look closely at about where the passes lie.
 */
export function posteriorBox(passes: readonly KnownPass[], prior: RatePrior): Box {
  let search = firstSearch(passes, prior);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const isSearching = round < SEARCHING_ROUNDS;
    const middles = isSearching ? nearAndFar(search) : evenPlaces(search.box.middle, EVEN_MIDDLES);
    const sight = { depth: 2 * DEPTH, best: search.best };
    const next = shrunk(search.box, middles, logarithmsOf(passes, prior, sight));
    const isWorth = widthRatio(next.box, search.box) < WORTH_SHRINKING;
    search = next;
    if (!isSearching && !isWorth) break;
  }
  return search.box;
}

/** `count` places from end to end. */
export function evenPlaces([low, high]: Ends, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => low + ((high - low) * index) / (count - 1));
}

function nearAndFar({ box, best }: Search): readonly number[] {
  const shares = Array.from({ length: PLACES_EACH_WAY }, (_, index) => NEARER ** -index);
  const [low, high] = box.middle;
  return [
    ...shares.map((share) => best + share * (low - best)),
    best,
    ...shares.toReversed().map((share) => best + share * (high - best)),
  ];
}

function firstSearch(
  passes: readonly KnownPass[],
  { median, logStandard, scatter }: RatePrior,
): Search {
  const shown = passes
    .map(({ amount, wedge, doubt }) => Math.log(Math.max(wedge, doubt) / amount))
    .sort((a, b) => a - b);
  const middle = Math.log(median);
  const [least, greatest] = [shown[0] ?? middle, shown.at(-1) ?? middle];
  const [byPrior, byPasses] = [BEYOND * logStandard, BEYOND * scatter[1]];
  return {
    box: {
      middle: [
        Math.min(middle - byPrior, least - byPasses),
        Math.max(middle + byPrior, greatest + byPasses),
      ],
      logScale: [Math.log(scatter[0]), Math.log(scatter[1])],
    },
    best: shown[Math.floor(shown.length / 2)] ?? middle,
  };
}

/** The part of `box` that the posterior fills, with the next place to every side. */
function shrunk(box: Box, middles: readonly number[], logarithms: Logarithms): Search {
  const logScales = evenPlaces(box.logScale, SCALES);
  const rows = logScales.map((place) => logarithms(Math.exp(place), middles));
  const columns = middles.map((_, index) => Math.max(...rows.map((row) => row[index]!)));
  const greatest = Math.max(...columns);
  const isFilled = (one: number) => one > greatest - DEPTH;
  return {
    box: {
      middle: around(middles, columns.map(isFilled)),
      logScale: around(
        logScales,
        rows.map((row) => row.some(isFilled)),
      ),
    },
    best: middles[columns.indexOf(greatest)]!,
  };
}

function around(places: readonly number[], filled: readonly boolean[]): Ends {
  const first = Math.max(0, filled.indexOf(true) - 1);
  const last = Math.min(places.length - 1, filled.lastIndexOf(true) + 1);
  return [places[first]!, places[last]!];
}

/** The least share of its width that either side of a box keeps. */
function widthRatio(now: Box, before: Box): number {
  const ratio = (key: keyof Box) => {
    const [width, whole] = [now[key], before[key]].map(([low, high]) => high - low);
    return whole === 0 ? 1 : width! / whole!;
  };
  return Math.min(ratio('middle'), ratio('logScale'));
}
