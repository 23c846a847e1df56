import { beginsUnit } from './expression';

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
