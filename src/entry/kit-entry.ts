import { DEFAULT_KIT } from '../core/readings/kit';
import type { LengthUnit } from '../core/units/length';
import { inUnit, type TypedLength } from './typed-length';

/** What of the kit is a length, with the unit that it is kept in. */
const LENGTH_UNITS = {
  indicatorResolution: 'µm',
  indicatorError: 'µm',
  seating: 'µm',
  plate: 'µm',
  micrometerResolution: 'µm',
  micrometerError: 'µm',
  heightSetting: 'mm',
} as const satisfies Readonly<Record<string, LengthUnit>>;

export type KitLength = keyof typeof LENGTH_UNITS;
export const KIT_LENGTHS = Object.keys(LENGTH_UNITS) as readonly KitLength[];

/** What of the kit is an angle in degrees or a difference of temperature in K. */
export const KIT_NUMBERS = ['leverAngle', 'leverWithin', 'warmth'] as const;
export type KitNumber = (typeof KIT_NUMBERS)[number];

/** How the plate's flatness is known: as the most it does under a block, or by its grade. */
export const PLATE_KINDS = [
  'stated',
  'ISO 8512 grade 0',
  'ISO 8512 grade 1',
  'ISO 8512 grade 2',
  'ISO 8512 grade 3',
  'GGG-P-463c grade AA',
  'GGG-P-463c grade A',
  'GGG-P-463c grade B',
] as const;
export type PlateKind = (typeof PLATE_KINDS)[number];

/** What is known of the instruments and the plate, as typed. */
export interface KitEntry
  extends Readonly<Record<KitLength, TypedLength>>,
    Readonly<Record<KitNumber, string>> {
  readonly plateKind: PlateKind;
  readonly plateLength: TypedLength;
  readonly plateWidth: TypedLength;
  /** What of it was taken out of the drawer, by kind: its figures are then those above. */
  readonly chosen?: Readonly<Partial<Record<ChosenKind, InstrumentName>>>;
}

/** Kinds of things of which a kit has one. */
export const CHOSEN_KINDS = ['indicator', 'comparator', 'column', 'micrometer', 'plate'] as const;
export type ChosenKind = (typeof CHOSEN_KINDS)[number];

/** Which of the shop's instruments: by the id it keeps for life, and what it is called. */
export interface InstrumentName {
  readonly id: string;
  readonly name: string;
}

/** The defaults, as if typed. */
export function defaultKit(): KitEntry {
  const lengths = KIT_LENGTHS.map((item) => {
    return [item, { text: String(DEFAULT_KIT[item]), unit: LENGTH_UNITS[item] }] as const;
  });
  const numbers = KIT_NUMBERS.map((item) => [item, String(DEFAULT_KIT[item])] as const);
  return {
    ...(Object.fromEntries(lengths) as Record<KitLength, TypedLength>),
    ...(Object.fromEntries(numbers) as Record<KitNumber, string>),
    plateKind: 'stated',
    plateLength: { text: '630', unit: 'mm' },
    plateWidth: { text: '400', unit: 'mm' },
  };
}

/** What a default is shown in: figures of instruments in `deviation`, heights and the plate's sizes in `size`. */
interface ShownUnits {
  readonly deviation: LengthUnit;
  readonly size: LengthUnit;
}

/** The kit to be shown in `units`: each length that is still the default is put into them, what was typed stays. */
export function kitShownIn(kit: KitEntry, units: ShownUnits): KitEntry {
  const usual = defaultKit();
  const shown = [...KIT_LENGTHS, 'plateLength', 'plateWidth'] as const;
  const lengths = shown.flatMap((item) => {
    const { text, unit } = kit[item];
    const isUsual = text === usual[item].text && unit === usual[item].unit;
    const shownIn = unit === 'mm' ? units.size : units.deviation;
    return isUsual ? [[item, inUnit(kit[item], shownIn)] as const] : [];
  });
  return { ...kit, ...Object.fromEntries(lengths) };
}
