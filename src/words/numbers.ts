import type { Found } from '../core/inspection/found';
import { fromMicrometres, fromMillimetres, type LengthUnit } from '../core/units/length';

/** Decimals that a deviation is shown with: to a hundredth of a µm or what comes nearest. */
const DECIMALS: Readonly<Record<LengthUnit, number>> = { µm: 2, mm: 5, tenths: 2, thou: 3, in: 6 };

/** What stands for a number that there is not. */
const NO_NUMBER = '–';

/** A number rounded for showing, with a true minus sign and no minus zero. */
export function rounded(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return NO_NUMBER;
  // What is half a step but for the last bits of a sum goes up: equal figures are not to be shown as two.
  const text = Math.min(Math.abs(value) * (1 + 1e-12), Number.MAX_VALUE).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** A deviation of `micrometres` in `unit`, without the unit. */
export function deviationNumber(micrometres: number, unit: LengthUnit): string {
  return rounded(fromMicrometres(micrometres, unit), DECIMALS[unit]);
}

/** A deviation of `micrometres` in `unit`: '1.82 µm'. */
export function deviation(micrometres: number, unit: LengthUnit): string {
  return `${deviationNumber(micrometres, unit)} ${unit}`;
}

/** A deviation with its expanded uncertainty, both in µm: '1.82 ± 1.27 µm'. */
export function withDoubt(
  micrometres: number,
  expandedUncertainty: number,
  unit: LengthUnit,
): string {
  const value = deviationNumber(micrometres, unit);
  return `${value} ± ${deviationNumber(expandedUncertainty, unit)} ${unit}`;
}

/** The same in one piece, where a line could break before its unit. */
export function keptTogether(figure: string): string {
  return figure.replaceAll(' ', '\u00a0');
}

/** A figure with its doubt, µm, as its verdict is about: '1.82 ± 1.27 µm', or '5.19 µm, 3.72 to 6.69' with form. */
export function foundInWords({ value, doubt }: Found, unit: LengthUnit): string {
  if ('expanded' in doubt) return withDoubt(value, doubt.expanded, unit);
  const [low, high] = [deviationNumber(doubt.low, unit), deviationNumber(doubt.high, unit)];
  return `${deviation(value, unit)}, ${low} to ${high}`;
}

/** A size or height of `millimetres` in the shop's unit, without idle zeros: '90 mm', '3.5 in'. */
export function size(millimetres: number, unit: 'mm' | 'in'): string {
  const text = fromMillimetres(millimetres, unit).toFixed(unit === 'in' ? 4 : 3);
  return `${Number(text)} ${unit}`;
}

/** A place that a hand finds, of `millimetres`: to half a millimetre or so. */
export function place(millimetres: number, unit: 'mm' | 'in'): string {
  const text = fromMillimetres(millimetres, unit).toFixed(unit === 'in' ? 2 : 1);
  return `${Number(text)} ${unit}`;
}

/** Stands behind the number of a share: the two are not to stand on two lines. */
export const PER_CENT = '\u00a0%';

/** A probability in words that never claim to be certain: '98 %', 'more than 99.9 %'. */
export function probabilityInWords(probability: number): string {
  if (probability > 0.999) return `more than 99.9${PER_CENT}`;
  if (probability < 0.001) return `less than 0.1${PER_CENT}`;
  const percent = probability * 100;
  const decimals = percent > 99 || percent < 1 ? 1 : 0;
  return `${rounded(percent, decimals)}${PER_CENT}`;
}

/**
 * A probability that does not reach the level asked for, to a tenth of a per cent and never rounded up
 * to what it does not reach: '94.8 %'.
 */
export function shortOfSureInWords(probability: number): string {
  const tenths = probability > 0.5 ? Math.floor(probability * 1000) : Math.ceil(probability * 1000);
  return `${rounded(tenths / 10, 1)}${PER_CENT}`;
}

/** An angle in arc seconds with its expanded uncertainty: '4.18 ± 2.90″'. */
export function arcSecondsWithDoubt(seconds: number, expandedUncertainty: number): string {
  return `${rounded(seconds, 2)} ± ${rounded(expandedUncertainty, 2)}″`;
}

/** Degrees of freedom: '8', '31', or '∞'. */
export function degreesInWords(degrees: number): string {
  return degrees > 1000 ? '∞' : String(Math.floor(degrees));
}
