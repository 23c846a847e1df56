import { toMicrometres } from '../core/units/length';
import { readNumber } from './number';
import type { ProblemList } from './problems';
import { isBlank, type TypedLength } from './typed-length';

/** Limits of a length in µm, with the words to refuse by. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  readonly tooSmall: string;
  readonly tooLarge: string;
}

/**
 * The length in µm, or undefined with the problem noted at `field`. An empty field is noted as
 * missing where `missing` says what to ask for, and passed over where it does not.
 */
export function readLength(
  typed: TypedLength,
  field: string,
  problems: ProblemList,
  limits: Limits,
  missing?: string,
): number | undefined {
  if (isBlank(typed)) {
    if (missing !== undefined) problems.missing(field, missing);
    return undefined;
  }
  const read = readNumber(typed.text);
  if (!read.ok) {
    problems.wrong(field, read.message);
    return undefined;
  }
  const length = toMicrometres(read.value, typed.unit);
  if (length < limits.least) problems.wrong(field, limits.tooSmall);
  else if (length > limits.most) problems.wrong(field, limits.tooLarge);
  else return length;
  return undefined;
}
