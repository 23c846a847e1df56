import { DEFAULT_KIT, type Kit } from '../core/readings/kit';
import {
  diagonalOf,
  type FederalPlateGrade,
  federalFlatness,
  type IsoPlateGrade,
  isoFlatness,
} from '../core/statistics/plate-flatness';
import { fieldKey } from './field-keys';
import {
  KIT_LENGTHS,
  KIT_NUMBERS,
  type KitEntry,
  type KitLength,
  type KitNumber,
  type PlateKind,
} from './kit-entry';
import { readNumber } from './number';
import { ProblemList, type Problems } from './problems';
import { type Limits, readLength } from './read-length';
import type { TypedLength } from './typed-length';

const ASKED = 'Needed to tell the doubt';

/** A resolution of nothing would claim perfect knowledge; the rest may be 0. */
const ABOVE_NOTHING: readonly KitLength[] = ['indicatorResolution', 'micrometerResolution'];

function limitsOf(item: KitLength): Limits {
  return {
    least: ABOVE_NOTHING.includes(item) ? 0.001 : 0,
    most: item === 'heightSetting' ? 10_000 : 1000,
    tooSmall: ABOVE_NOTHING.includes(item) ? 'Above 0' : 'Not below 0',
    tooLarge: 'Larger than any usable kit. Check the unit',
  };
}

const PLATE_SIZE: Limits = {
  least: 50_000,
  most: 10_000_000,
  tooSmall: 'Under 50 mm: too small for a plate',
  tooLarge: 'Over 10 m: check the size and the unit',
};

/** Greatest of each number: a lever beyond 60° hardly moves, a part beyond 20 K is still hot. */
const MOST: Readonly<Record<KitNumber, number>> = { leverAngle: 60, leverWithin: 30, warmth: 20 };

type Graded = (length: number, width: number) => number;

const iso =
  (grade: IsoPlateGrade): Graded =>
  (length, width) =>
    isoFlatness(length, width, grade);
const federal =
  (grade: FederalPlateGrade): Graded =>
  (length, width) =>
    federalFlatness(length, width, grade);

/** Flatness in µm of a plate with sides in mm, by its grade. */
const GRADED: Readonly<Record<Exclude<PlateKind, 'stated'>, Graded>> = {
  'ISO 8512 grade 0': iso(0),
  'ISO 8512 grade 1': iso(1),
  'ISO 8512 grade 2': iso(2),
  'ISO 8512 grade 3': iso(3),
  'GGG-P-463c grade AA': federal('AA'),
  'GGG-P-463c grade A': federal('A'),
  'GGG-P-463c grade B': federal('B'),
};

/** The kit, or undefined with what is wrong. */
export function readKit(entry: KitEntry): {
  readonly kit: Kit | undefined;
  readonly problems: Problems;
} {
  const problems = new ProblemList();
  const lengths = KIT_LENGTHS.map((item) => {
    const read = readKitLength(item, entry[item], fieldKey.kit(item), problems);
    return [item, read / (item === 'heightSetting' ? 1000 : 1)] as const;
  });
  const numbers = KIT_NUMBERS.map(
    (item) => [item, readKitNumber(item, entry[item], fieldKey.kit(item), problems)] as const,
  );
  const plateOverall = readPlate(entry, problems);
  if (problems.all.size > 0) return { kit: undefined, problems: problems.all };
  const kit: Kit = {
    ...(Object.fromEntries(lengths) as Record<KitLength, number>),
    ...(Object.fromEntries(numbers) as Record<KitNumber, number>),
    seatingDegrees: DEFAULT_KIT.seatingDegrees,
    ...(plateOverall !== undefined && { plateOverall }),
  };
  return { kit, problems: problems.all };
}

/** A length of the kit in µm; 0 with the problem noted at `field` where it cannot be read. */
export function readKitLength(
  item: KitLength,
  typed: TypedLength,
  field: string,
  problems: ProblemList,
): number {
  return readLength(typed, field, problems, limitsOf(item), ASKED) ?? 0;
}

/** An angle or a difference of the kit; 0 with the problem noted at `field` where it cannot be read. */
export function readKitNumber(
  item: KitNumber,
  text: string,
  field: string,
  problems: ProblemList,
): number {
  const read = readNumber(text);
  if (!read.ok) problems.wrong(field, read.message);
  else if (read.value < 0) problems.wrong(field, 'Not below 0');
  else if (read.value > MOST[item]) problems.wrong(field, `Not above ${MOST[item]}`);
  else return read.value;
  return 0;
}

/** The whole plate by its grade; undefined where the most it does under a block is stated instead. */
export function readPlate(
  entry: Pick<KitEntry, 'plateKind' | 'plateLength' | 'plateWidth'>,
  problems: ProblemList,
  keyOf: (side: string) => string = fieldKey.kit,
): Kit['plateOverall'] {
  if (entry.plateKind === 'stated') return undefined;
  const sides = (['plateLength', 'plateWidth'] as const).map((side) =>
    readLength(entry[side], keyOf(side), problems, PLATE_SIZE, 'Needed with a grade'),
  );
  const [length, width] = sides;
  if (length === undefined || width === undefined) return undefined;
  const millimetres = [length / 1000, width / 1000] as const;
  const flatness = GRADED[entry.plateKind](...millimetres);
  return { flatness, diagonal: diagonalOf(...millimetres) };
}
