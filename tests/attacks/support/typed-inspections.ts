import fc, { type Arbitrary, type GeneratorValue } from 'fast-check';
import {
  AXES,
  type Axis,
  FACE_PAIRS,
  FACES,
  type Face,
  outwardNormal,
  pairsAround,
} from '../../../src/core/part/faces';
import { sitReading } from '../../../src/core/readings/unknowns';
import { fromMicrometres, LENGTH_UNITS, type LengthUnit } from '../../../src/core/units/length';
import {
  defaultKit,
  KIT_LENGTHS,
  KIT_NUMBERS,
  type KitEntry,
  PLATE_KINDS,
} from '../../../src/entry/kit-entry';
import type { PartEntry } from '../../../src/entry/part-entry';
import type { SetupEntry } from '../../../src/entry/setup-entry';
import { lengthText, type TypedLength } from '../../../src/entry/typed-length';

/** All that was typed before and at the plate, and what of it was left out. */
export interface TypedInspection {
  readonly part: PartEntry;
  readonly kit: KitEntry;
  readonly setups: readonly SetupEntry[];
  /** Names of readings and of placings. */
  readonly leftOut: readonly string[];
  /** As typed: per cent. */
  readonly level: string;
  readonly share: string;
  readonly units: { readonly size: 'mm' | 'in'; readonly deviation: Exclude<LengthUnit, 'in'> };
}

/** What no careful hand types. */
const JUNK = [
  '',
  ' ',
  '-',
  '+',
  '.',
  ',',
  '−',
  '1e9',
  '1,2.3',
  'NaN',
  'Infinity',
  '٣',
  '0x10',
  '--1',
  '999999999999999',
  '-999999999999999',
  '0.00000000000001',
  '1'.repeat(400),
  '<b>1</b>',
  '=1+1',
  '\u0000',
  '1 000',
];

/** How wildly somebody types. */
interface Hand {
  readonly g: GeneratorValue;
  /** True where fields may hold what is no number, or nothing. */
  readonly careless: boolean;
}

const pick = <T>({ g }: Hand, ...values: readonly T[]): T => g(() => fc.constantFrom(...values));
const whole = ({ g }: Hand, min: number, max: number) => g(() => fc.integer({ min, max }));
const share = ({ g }: Hand) => g(() => fc.double({ min: 0, max: 1, noNaN: true }));
const chance = (hand: Hand, oneIn: number) => whole(hand, 1, oneIn) === 1;

/** From `low` to `high`, each power of ten as likely as the others. */
const ofAnySize = (hand: Hand, low: number, high: number) =>
  Math.exp(Math.log(low) + share(hand) * Math.log(high / low));

/** `micrometres` as typed in some unit, or what is no length at all. */
function typed(hand: Hand, micrometres: number): TypedLength {
  const unit = pick<LengthUnit>(hand, 'mm', 'µm', ...LENGTH_UNITS);
  if (hand.careless && chance(hand, 12)) return { text: pick(hand, ...JUNK), unit };
  return { text: figures(fromMicrometres(micrometres, unit)), unit };
}

/** As many decimals as a field takes at the most: fifteen digits in all. */
const figures = (value: number) =>
  lengthText(value, 14 - Math.max(1, Math.ceil(Math.log10(Math.abs(value) + 1))));

const blank = (): TypedLength => ({ text: '', unit: 'mm' });

type Size = Readonly<Record<Axis, number>>;

/** mm: blocks of the hand, leaves, bars and plates, up to what is refused. */
function someSize(hand: Hand): Size {
  const side = () => {
    if (chance(hand, 3)) return pick(hand, 0.5001, 1, 25.4, 100, 2999);
    return chance(hand, 2) ? whole(hand, 20, 200) : ofAnySize(hand, 0.51, 2999);
  };
  return { x: side(), y: side(), z: side() };
}

function somePart(hand: Hand, size: Size): PartEntry {
  const limit = (low: number, high: number) =>
    chance(hand, 3) ? blank() : typed(hand, whole(hand, low, high));
  return {
    name: 'Block',
    job: '',
    material: pick(hand, '', 'Aluminium', 'Tool steel', 'cheese'),
    size: {
      x: typed(hand, size.x * 1000),
      y: typed(hand, size.y * 1000),
      z: typed(hand, size.z * 1000),
    },
    ...(chance(hand, 3) && {
      sizeLimits: Object.fromEntries(
        AXES.map((axis) => [axis, { lower: limit(-60, 0), upper: limit(1, 60) }]),
      ),
    }),
    ...(chance(hand, 4) && {
      finish: { text: pick(hand, '0.8', hand.careless ? 'x' : '3.2'), unit: 'µm' as const },
    }),
    datum: pick(hand, ...FACES),
    requirements: Array.from({ length: whole(hand, 0, 4) }, (_, index) => ({
      id: `requirement ${index}`,
      face: pick(hand, ...FACES),
      datum: pick(hand, ...FACES),
      tolerance: typed(hand, chance(hand, 3) ? ofAnySize(hand, 0.01, 10_000) : whole(hand, 1, 50)),
    })).filter(({ face, datum }) => hand.careless || face !== datum),
    ...(chance(hand, 2) && {
      flatness: FACES.filter(() => chance(hand, 3)).map((face) => ({
        id: `flatness ${face}`,
        face,
        tolerance: typed(hand, chance(hand, 3) ? ofAnySize(hand, 0.01, 10_000) : whole(hand, 1, 9)),
      })),
    }),
    finished: FACES.filter(() => chance(hand, 4)),
  };
}

function someKit(hand: Hand): KitEntry {
  const usual = defaultKit();
  if (!chance(hand, 3)) return usual;
  const lengths = KIT_LENGTHS.map((item) => [
    item,
    pick(hand, usual[item], {
      text: pick(hand, '0.001', '1000', '3', hand.careless ? '' : '0.01'),
      unit: 'µm' as const,
    }),
  ]);
  const numbers = KIT_NUMBERS.map((item) => [item, pick(hand, usual[item], '0', '15', '20')]);
  return {
    ...usual,
    ...Object.fromEntries(lengths),
    ...Object.fromEntries(numbers),
    plateKind: pick(hand, ...PLATE_KINDS),
    ...(hand.careless && { leverAngle: pick(hand, '60', '61', '') }),
  };
}

/** About what a setup's indicator shows, µm, and how far from that it goes. */
interface Values {
  readonly about: number;
  readonly within: number;
}

/** Of faces `tall` mm high: a careful hand's are not steeper than anything nearly square can be. */
function someValues(hand: Hand, tall: number): Values {
  const within = chance(hand, 4) ? 1e-6 : Math.min(40, tall / 2);
  return { about: pick(hand, 0, 0, 12.5, 4900, -4900), within };
}

/** What an indicator shows, µm: now and then the same each time, or beyond all of its travel. */
function someValue(hand: Hand, { about, within }: Values): number {
  if (hand.careless && chance(hand, 8)) return pick(hand, -5000, 5000, 5001, 300);
  const off = pick(hand, 0, within, -within, 2 * share(hand) - 1, 2 * share(hand) - 1);
  return about + (Math.abs(off) <= 1 ? off * within : off);
}

/** A place between the two ends of `length` mm, in µm: now and then on an end, or all but the same. */
function somePlace(hand: Hand, length: number): number {
  const part = pick(hand, 0, 1, 0.5, 0.5 + 1e-7, ...Array.from({ length: 8 }, () => share(hand)));
  return (hand.careless && chance(hand, 20) ? 1.5 : part) * length * 1000;
}

const depth = (size: Size, face: Face) => size[outwardNormal(face).axis];

/** As many as asked for; now and then each twice, as a hand does that repeats itself. */
const several = <T>(hand: Hand, most: number, make: (index: number) => T): readonly T[] =>
  Array.from({ length: whole(hand, 0, most) }, (_, index) => make(index));

function someSetup(hand: Hand, size: Size, id: string): SetupEntry {
  const base = pick(hand, ...FACES);
  const standing = pick(hand, ...pairsAround(base));
  const faces = chance(hand, 2) ? standing : ([standing[1], standing[0]] as const);
  const tall = depth(size, base);
  const pair = pick(hand, ...FACE_PAIRS);
  const values = someValues(hand, Math.min(size.x, size.y, size.z));
  const least = Math.min(size.x, size.y, size.z);
  const place = (index: number) => ({
    id: `${id} place ${index}`,
    up: typed(hand, somePlace(hand, least)),
    across: chance(hand, 3) ? blank() : typed(hand, somePlace(hand, least)),
  });
  switch (whole(hand, 1, 6)) {
    case 1:
    case 2: {
      const [one, other] = [somePlace(hand, tall), somePlace(hand, tall)];
      return {
        kind: 'nose comparator',
        ...{ id, faces, base },
        noseHeight: typed(hand, hand.careless ? one : Math.min(one, other) / 2),
        indicatorHeight: typed(hand, Math.max(one, other, tall * 10)),
        placings: several(hand, 8, (index) => ({
          id: `${id} placing ${index}`,
          face: pick(hand, ...faces),
          ...(hand.careless && chance(hand, 6) && { base: pick(hand, ...faces) }),
          reading: typed(hand, someValue(hand, values)),
        })).map((placing) => (placing.base !== undefined ? { ...placing, face: base } : placing)),
      };
    }
    case 3: {
      const most = whole(hand, 1, 6);
      const apart = (index: number) => ((index + share(hand) / 2) / most) * tall * 1000;
      const heights = several(hand, most, (index) => ({
        id: `h${index}`,
        height: typed(hand, hand.careless ? somePlace(hand, tall) : apart(index)),
      }));
      return {
        kind: 'column',
        ...{ id, faces, base, heights },
        placings: several(hand, 4, (index) => ({
          id: `${id} placing ${index}`,
          face: pick(hand, ...faces),
          readings: Object.fromEntries(
            heights.map(({ id: height }) => [height, typed(hand, someValue(hand, values))]),
          ),
        })),
      };
    }
    case 4:
      return {
        kind: 'micrometer',
        ...{ id, faces: pair },
        places: several(hand, 8, (index) => ({
          ...place(index),
          thickness: typed(
            hand,
            depth(size, pair[0]) * 1000 +
              someValue(hand, { about: 0, within: Math.min(values.within, 5) }),
          ),
        })),
      };
    case 5:
      return {
        kind: pick(hand, 'over the top', 'face map'),
        ...{ id, faces: pair },
        places: several(hand, 12, (index) => ({
          ...place(index),
          reading: typed(hand, someValue(hand, values)),
        })),
      };
    default:
      return {
        kind: 'assumed parallel',
        ...{ id, faces: pair },
        within: typed(hand, ofAnySize(hand, 0.01, 1000)),
      };
  }
}

/** Names of some readings, and of some placings. */
function someLeftOut(hand: Hand, setups: readonly SetupEntry[]): readonly string[] {
  if (!chance(hand, 3)) return [];
  const names = setups.flatMap((setup) => {
    if ('places' in setup) return setup.places.map(({ id }) => id);
    if (setup.kind === 'nose comparator') return setup.placings.map(({ id }) => id);
    if (setup.kind !== 'column') return [setup.id];
    return setup.placings.flatMap(({ id }) => [
      sitReading(id),
      ...setup.heights.map((height) => `${id} ${height.id}`),
    ]);
  });
  return names.filter(() => chance(hand, 4));
}

/**
 * Inspections as no shop would read them: of any mix of setups on blocks of any shape, repeated,
 * degenerate, far beyond what an indicator shows, and a third of them carelessly typed.
 */
export const typedInspections: Arbitrary<TypedInspection> = fc.gen().map((g) => {
  const hand: Hand = { g, careless: g(() => fc.integer({ min: 1, max: 4 })) === 1 };
  const size = someSize(hand);
  const setups = several(hand, 5, (index) => someSetup(hand, size, `setup ${index}`));
  return {
    part: somePart(hand, size),
    kit: someKit(hand),
    setups,
    leftOut: someLeftOut(hand, setups),
    level: pick(hand, '60', '95', '99.9'),
    share: pick(hand, '5', '50', '100'),
    units: { size: pick(hand, 'mm', 'in'), deviation: pick(hand, 'µm', 'mm', 'tenths', 'thou') },
  };
});
