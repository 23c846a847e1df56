/** A number that was read, or what is wrong with the text in plain words. */
export type NumberRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string };

const DECIMAL = /^([+\-−]?)(\d*)(?:[.,](\d*))?$/;

/** Digits beyond these are a slip of the finger, and beyond what a number holds. */
const MOST_DIGITS = 15;

/**
 * Reads a decimal number strictly: an optional sign, digits, and one decimal point or comma. No
 * thousands separators: '1,234' is a little over one.
 */
export function readNumber(text: string): NumberRead {
  const trimmed = text.trim();
  if (trimmed === '') return refuse('Nothing typed yet');
  const separators = trimmed.match(/[.,]/g)?.length ?? 0;
  if (separators > 1) return refuse('Two decimal marks: keep one');
  const match = DECIMAL.exec(trimmed);
  if (match === null) return refuse('Digits only, with a sign and one decimal mark at most');
  const [, sign, whole = '', fraction = ''] = match;
  if (whole + fraction === '') return refuse('The digits are missing');
  if (whole.length + fraction.length > MOST_DIGITS) return refuse('Too many digits');
  const size = Number(`${whole || '0'}.${fraction || '0'}`);
  return { ok: true, value: sign === '-' || sign === '−' ? -size || 0 : size };
}

function refuse(message: string): NumberRead {
  return { ok: false, message };
}
