import { sizeUnitOf } from '../core/units/length';
import type { ProblemList } from './problems';
import { isBlank, readTyped, type TypedLength } from './typed-length';

/** Limits of a length in µm, with the words to refuse by. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  readonly tooSmall: Refusal;
  readonly tooLarge: Refusal;
}

/** Words to refuse by: with a length in them, told the unit that a size has beside the field. */
export type Refusal = string | ((unit: 'mm' | 'in') => string);

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
  const read = readTyped(typed);
  if (read.kind !== 'length') {
    if (read.kind === 'waiting') problems.waiting(field, read.message);
    else problems.wrong(field, read.message);
    return undefined;
  }
  const { length } = read;
  const refuse = (why: Refusal) =>
    problems.wrong(field, typeof why === 'string' ? why : why(sizeUnitOf(typed.unit)));
  if (length < limits.least) refuse(limits.tooSmall);
  else if (length > limits.most) refuse(limits.tooLarge);
  else return length;
  return undefined;
}
