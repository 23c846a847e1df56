import { sizeUnitOf } from '../core/units/length';
import type { ProblemList } from './problems';
import { isBlank, readTyped, type TypedLength } from './typed-length';

/** Limits of a length in µm, with the words to refuse by. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  readonly tooSmall: Refusal;
  readonly tooLarge: Refusal;
  /** A length nearer to 0 than `than`, µm, is taken, and doubted unless it is 0. */
  readonly doubted?: { readonly than: number; readonly why: Refusal };
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
  const { least, most, tooSmall, tooLarge, doubted } = limits;
  const said = (why: Refusal) => (typeof why === 'string' ? why : why(sizeUnitOf(typed.unit)));
  if (length < least || length > most) {
    problems.wrong(field, said(length < least ? tooSmall : tooLarge));
    return undefined;
  }
  if (doubted !== undefined && length !== 0 && Math.abs(length) < doubted.than) {
    problems.doubtful(field, said(doubted.why));
  }
  return length;
}
