/*
 * A spreadsheet takes what begins with one of a few signs for a formula, and runs it. Such text gets
 * an apostrophe in front, so that it is shown and not run, and loses it as it is read.
 *
 * A spreadsheet that goes by other marks between the cells than commas finds beginnings within a text:
 * behind each semicolon, tab or end of line.
 */

/** The signs with their full-width forms, behind whatever a spreadsheet passes over; and tabs and ends of lines at the very beginning. */
const FORMULA = `['"\\s]*[=+\\-@＝＋－＠]|'*[\\t\\r\\n]`;

const AT_FIRST = new RegExp(`^(?=${FORMULA})`);
const WITHIN = new RegExp(`[;\\t\\r\\n](?=${FORMULA})`, 'g');
const DISARMED_AT_FIRST = new RegExp(`^'(?=${FORMULA})`);
const DISARMED_WITHIN = new RegExp(`([;\\t\\r\\n])'(?=${FORMULA})`, 'g');

/** The text so that no spreadsheet runs any of it. */
export function disarmed(text: string): string {
  return text.replace(AT_FIRST, "'").replace(WITHIN, "$&'");
}

/** The text as it was before it was disarmed. */
export function armed(text: string): string {
  if (!text.includes("'")) return text;
  return text.replace(DISARMED_WITHIN, '$1').replace(DISARMED_AT_FIRST, '');
}
