import { fromMicrometres } from '../core/units/length';
import type { ReadingBefore } from '../entry/readings-before';
import { lengthIn, lengthText, readTyped, type TypedLength } from '../entry/typed-length';
import { withUnit } from './read-as';

const NAMES: Readonly<Record<ReadingBefore['when'], string>> = {
  'last time': 'Last time',
  'seating before': 'Seating before',
};

/** Decimals of a difference: those that an instrument shows. */
const DECIMALS = { µm: 2, mm: 5, tenths: 2, thou: 3, in: 6 } as const;

/** What was read before at the same point, and how far it is from there: 'Last time 41 µm, changed by −3.2'. */
export function beforeInWords(
  before: ReadingBefore | undefined,
  typed: TypedLength,
): string | undefined {
  if (before === undefined) return undefined;
  const { unit } = typed;
  const then = readTyped(before.typed);
  if (then.kind !== 'length') return undefined;
  const said = `${NAMES[before.when]} ${withUnit(lengthIn(then.length, unit), unit)}`;
  const now = readTyped(typed);
  if (now.kind !== 'length') return said;
  const change = lengthText(fromMicrometres(now.length - then.length, unit), DECIMALS[unit]);
  if (change === '0') return `${said}, now the same`;
  return `${said}, changed by ${change.startsWith('-') ? '−' : '+'}${change.replace('-', '')}`;
}
