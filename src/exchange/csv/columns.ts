import type { LengthUnit } from '../../core/units/length';

/** The columns of a table of readings, and what stands under each; the same names out and in. */
export const COLUMNS = {
  part: { heading: 'part', says: 'its name' },
  job: { heading: 'job', says: 'or drawing' },
  taken: { heading: 'taken', says: 'when begun, ISO 8601 in UTC' },
  setup: { heading: 'setup', says: 'counted from 1' },
  placing: { heading: 'placing', says: 'counted from 1' },
  way: { heading: 'way', says: 'of reading' },
  face: { heading: 'face', says: 'that was read' },
  base: { heading: 'stands on', says: 'that face' },
  noseHeight: {
    heading: 'nose height',
    says: 'over the plate',
    unit: 'mm',
  },
  height: { heading: 'height', says: 'of the indicator, over the plate', unit: 'mm' },
  up: {
    heading: 'up',
    says: 'from the edge nearest the datum',
    unit: 'mm',
  },
  across: { heading: 'across', says: 'from the edge beside it', unit: 'mm' },
  reading: { heading: 'reading', says: 'plus is plunger pushed in', unit: 'µm' },
  thickness: { heading: 'thickness', says: 'to the face opposite', unit: 'mm' },
  takenOver: {
    heading: 'taken over from',
    says: 'When a reading was taken that was taken over from earlier, ISO 8601 in UTC; empty where it was taken with the others',
  },
  within: {
    heading: 'parallel within',
    says: 'somebody’s word',
    unit: 'µm',
  },
  leftOut: {
    heading: 'left out because',
    says: 'empty where it counts',
  },
} as const satisfies Readonly<Record<string, { heading: string; says: string; unit?: LengthUnit }>>;

export type Column = keyof typeof COLUMNS;
export const COLUMN_NAMES = Object.keys(COLUMNS) as readonly Column[];

/** The heading with its unit, as we write it or as a file has it: 'reading (µm)', 'reading (tenths)'. */
export function headingOf(column: Column, unit?: LengthUnit): string {
  const { heading, ...rest } = COLUMNS[column];
  return 'unit' in rest ? `${heading} (${unit ?? rest.unit})` : heading;
}

/** A column of a file, and in which unit its numbers are. */
export interface Matched {
  readonly column: Column;
  readonly unit: LengthUnit;
}

const UNITS: ReadonlyMap<string, LengthUnit> = new Map([
  ['µm', 'µm'],
  ['μm', 'µm'],
  ['um', 'µm'],
  ['mm', 'mm'],
  ['in', 'in'],
  ['thou', 'thou'],
  ['tenths', 'tenths'],
]);

/** The name and the unit of a heading: 'Reading (µm)', 'reading [um]', 'Reading in µm' alike. */
const NAME_AND_UNIT = new RegExp(
  `^(.*?)(?: ?[([]([^()[\\]]*)[)\\]]|,?(?: in)? (${[...UNITS.keys()].join('|')}))?$`,
);

/** The unit that a heading names, as it stands there; undefined where it names none. */
export function unitNamedIn(heading: string): string | undefined {
  return nameAndUnit(heading).unit;
}

function nameAndUnit(heading: string): { readonly name: string; readonly unit?: string } {
  const plain = heading.trim().toLowerCase().replace(/\s+/g, ' ');
  const [, name = '', marked, bare] = NAME_AND_UNIT.exec(plain) ?? [];
  const unit = (marked ?? bare)?.trim();
  return { name, ...(unit !== undefined && { unit }) };
}

/** What a heading means; undefined where it is none of ours. Capitals and spaces do not matter. */
export function matchHeading(text: string): Matched | undefined {
  const { name, unit } = nameAndUnit(text);
  const column = COLUMN_NAMES.find((one) => COLUMNS[one].heading === name);
  if (column === undefined) return undefined;
  const known = COLUMNS[column];
  const own = 'unit' in known ? known.unit : 'mm';
  const read = unit === undefined ? own : UNITS.get(unit);
  return read === undefined ? undefined : { column, unit: read };
}
