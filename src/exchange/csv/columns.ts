import type { LengthUnit } from '../../core/units/length';

/** What each column of a table of readings means; the same names out and in. */
export const COLUMNS = {
  part: { heading: 'part' },
  job: { heading: 'job' },
  taken: { heading: 'taken' },
  setup: { heading: 'setup' },
  placing: { heading: 'placing' },
  way: { heading: 'way' },
  face: { heading: 'face' },
  base: { heading: 'stands on' },
  noseHeight: { heading: 'nose height', unit: 'mm' },
  height: { heading: 'height', unit: 'mm' },
  up: { heading: 'up', unit: 'mm' },
  across: { heading: 'across', unit: 'mm' },
  reading: { heading: 'reading', unit: 'µm' },
  thickness: { heading: 'thickness', unit: 'mm' },
  within: { heading: 'parallel within', unit: 'µm' },
  leftOut: { heading: 'left out because' },
} as const satisfies Readonly<Record<string, { heading: string; unit?: LengthUnit }>>;

export type Column = keyof typeof COLUMNS;
export const COLUMN_NAMES = Object.keys(COLUMNS) as readonly Column[];

/** The heading with its unit: 'reading (µm)'. */
export function headingOf(column: Column): string {
  const { heading, ...rest } = COLUMNS[column];
  return 'unit' in rest ? `${heading} (${rest.unit})` : heading;
}

/** A column of a file, and in which unit its numbers are. */
export interface Matched {
  readonly column: Column;
  readonly unit: LengthUnit;
}

const UNITS: Readonly<Record<string, LengthUnit>> = {
  µm: 'µm',
  μm: 'µm',
  um: 'µm',
  mm: 'mm',
  in: 'in',
  thou: 'thou',
  tenths: 'tenths',
};

/** What a heading means; undefined where it is none of ours. Capitals and spaces do not matter. */
export function matchHeading(text: string): Matched | undefined {
  const found = /^([^(]*)(?:\(([^)]*)\))?$/.exec(text.trim().toLowerCase());
  const [name = '', unit] = [found?.[1]?.trim().replace(/\s+/g, ' '), found?.[2]?.trim()];
  const column = COLUMN_NAMES.find((one) => COLUMNS[one].heading === name);
  if (column === undefined) return undefined;
  const known = COLUMNS[column];
  const own = 'unit' in known ? known.unit : 'mm';
  const read = unit === undefined ? own : UNITS[unit];
  return read === undefined ? undefined : { column, unit: read };
}
