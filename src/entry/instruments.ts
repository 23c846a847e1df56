import type { InstrumentName, KitEntry, KitLength, KitNumber } from './kit-entry';
import { defaultKit } from './kit-entry';
import type { NewId } from './new-id';
import { blank, type TypedLength } from './typed-length';

/*
 * What lies in the shop's drawer: entered once, chosen after. Figures go by the names that they have
 * in a kit, so that what is chosen lays them over the kit's.
 */

/** What a dial's plus stands for. Most count up as the plunger is pushed in; some count the other way. */
export type PlusMeans = 'pushed in' | 'let out';

/** Figures of the kit that come with an indicator. */
export const INDICATOR_LENGTHS = [
  'indicatorResolution',
  'indicatorError',
] as const satisfies readonly KitLength[];
export const LEVER_NUMBERS = ['leverAngle', 'leverWithin'] as const satisfies readonly KitNumber[];
type IndicatorFigure = (typeof INDICATOR_LENGTHS)[number] | (typeof LEVER_NUMBERS)[number];

/** A dial or digital indicator, plunger or lever. */
export interface IndicatorEntry extends InstrumentName, Pick<KitEntry, IndicatorFigure> {
  readonly kind: 'indicator';
  readonly lever: boolean;
  /** How far it travels in all; left empty where that is not known. */
  readonly range: TypedLength;
  readonly plus: PlusMeans;
}

/** A comparator with a nose, by its name only: what it shows on a square block is found by reading. */
export interface ComparatorEntry extends InstrumentName {
  readonly kind: 'comparator';
}

/** A column or height stand that an indicator slides on, by its name only: its lean is found by reading. */
export interface ColumnEntry extends InstrumentName {
  readonly kind: 'column';
}

export const MICROMETER_LENGTHS = [
  'micrometerResolution',
  'micrometerError',
] as const satisfies readonly KitLength[];

export interface MicrometerEntry
  extends InstrumentName,
    Pick<KitEntry, (typeof MICROMETER_LENGTHS)[number]> {
  readonly kind: 'micrometer';
}

/** A surface plate: its standard, grade and size, or what it does under a block. */
export interface PlateEntry
  extends InstrumentName,
    Pick<KitEntry, 'plate' | 'plateKind' | 'plateLength' | 'plateWidth'> {
  readonly kind: 'plate';
}

/** What is lapped or stoned with. Its grit stands in its name as the trade writes it: 'P400'. */
export interface AbrasiveEntry extends InstrumentName {
  readonly kind: 'abrasive';
  readonly grit: string;
}

export type DrawerItem =
  | IndicatorEntry
  | ComparatorEntry
  | ColumnEntry
  | MicrometerEntry
  | PlateEntry
  | AbrasiveEntry;
export type DrawerKind = DrawerItem['kind'];

/** A thing of `kind` as it comes to the drawer: with the figures of common practice. */
export function newItem(kind: DrawerKind, newId: NewId): DrawerItem {
  const named = { id: newId(), name: '' };
  const usual = defaultKit();
  switch (kind) {
    case 'indicator': {
      const { indicatorResolution, indicatorError, leverAngle, leverWithin } = usual;
      const figures = { indicatorResolution, indicatorError, leverAngle, leverWithin };
      return {
        ...{ kind, ...named, ...figures },
        ...{ lever: false, range: blank('mm'), plus: 'pushed in' },
      };
    }
    case 'micrometer': {
      const { micrometerResolution, micrometerError } = usual;
      return { kind, ...named, micrometerResolution, micrometerError };
    }
    case 'plate': {
      const { plate, plateKind, plateLength, plateWidth } = usual;
      return { kind, ...named, plate, plateKind, plateLength, plateWidth };
    }
    case 'abrasive':
      return { kind, ...named, grit: '' };
    case 'comparator':
    case 'column':
      return { kind, ...named };
  }
}

/** An abrasive as it is written down with work: 'P400 paper'. */
export function abrasiveName({ grit, name }: AbrasiveEntry): string {
  return [grit.trim(), name.trim()].filter(Boolean).join(' ');
}

/** The angle of a lever and how well it is known; a plunger has none, whatever stands in the fields. */
export function leverOf(indicator: IndicatorEntry): Pick<KitEntry, 'leverAngle' | 'leverWithin'> {
  const { lever, leverAngle, leverWithin } = indicator;
  return lever ? { leverAngle, leverWithin } : { leverAngle: '0', leverWithin: '0' };
}
