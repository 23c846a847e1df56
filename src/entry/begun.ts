import { beginsUnit } from './expression';
import type { Problems } from './problems';
import { shownIn } from './read-with';
import type { SetupEntry } from './setup-entry';

/** Ends with a sign, an operator or an open bracket, or is nothing yet but noughts. */
const AWAITS_MORE = /[-+−–*/×·÷(]\s*$|^[-+−]?0*[.,]?0*$/;

/**
 * True of a text that is right as far as it goes, whoever is still typing it: '4+', '0.0', '2 ten' or
 * '(3+1'. What is wrong with it is wrong only once it is left.
 */
export function isBegun(text: string): boolean {
  const word = /\p{L}+$/u.exec(text)?.[0];
  if (word !== undefined) return beginsUnit(word);
  return AWAITS_MORE.test(text) || text.split('(').length > text.split(')').length;
}

/** True where all that is wrong with the setups is that what an instrument showed is only begun. */
export function areOnlyBegun(setups: readonly SetupEntry[], problems: Problems): boolean {
  const texts = new Map(setups.flatMap(shownIn).map(({ key, typed }) => [key, typed.text]));
  return [...problems]
    .filter(([, { kind }]) => kind === 'wrong')
    .every(([field]) => isBegun(texts.get(field) ?? 'no reading'));
}
