/** The units of length that a shop reads and writes. A tenth is 0.0001 inch. */
export const LENGTH_UNITS = ['µm', 'mm', 'tenths', 'thou', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** Micrometres in one of each unit. Exact: the inch is 25.4 mm by definition (ISO 31-1, 1 in = 25,4 mm). */
const MICROMETRES: Readonly<Record<LengthUnit, number>> = {
  µm: 1,
  mm: 1000,
  tenths: 2.54,
  thou: 25.4,
  in: 25400,
};

/** The unit of sizes in the system that `unit` is of. */
export function sizeUnitOf(unit: LengthUnit): 'mm' | 'in' {
  return unit === 'µm' || unit === 'mm' ? 'mm' : 'in';
}

/** Length in µm of `value` given in `unit`. */
export function toMicrometres(value: number, unit: LengthUnit): number {
  return value * MICROMETRES[unit];
}

/** `micrometres` expressed in `unit`. */
export function fromMicrometres(micrometres: number, unit: LengthUnit): number {
  return micrometres / MICROMETRES[unit];
}

/** Length in mm of `value` given in `unit`. */
export function toMillimetres(value: number, unit: LengthUnit): number {
  return (value * MICROMETRES[unit]) / 1000;
}

/** `millimetres` expressed in `unit`. */
export function fromMillimetres(millimetres: number, unit: LengthUnit): number {
  return (millimetres * 1000) / MICROMETRES[unit];
}
