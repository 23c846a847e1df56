import { toMicrometres } from '../core/units/length';

/** Names of units as an expression holds them, with the µm that each is worth. */
export const UNIT_WORTHS = {
  micrometre: 1,
  millimetre: toMicrometres(1, 'mm'),
  tenth: toMicrometres(1, 'tenths'),
  thou: toMicrometres(1, 'thou'),
  inch: toMicrometres(1, 'in'),
} as const;

/** What people type for them. */
const UNITS: Readonly<Record<string, keyof typeof UNIT_WORTHS>> = {
  µm: 'micrometre',
  μm: 'micrometre',
  um: 'micrometre',
  micron: 'micrometre',
  microns: 'micrometre',
  mm: 'millimetre',
  tenth: 'tenth',
  tenths: 'tenth',
  thou: 'thou',
  in: 'inch',
  inch: 'inch',
  inches: 'inch',
  '"': 'inch',
  '″': 'inch',
};

/** True of the first letters of a unit, or all of them. */
export function beginsUnit(letters: string): boolean {
  return Object.keys(UNITS).some((unit) => unit.startsWith(letters.toLowerCase()));
}

/** Signs that are written in more than one way. */
const SIGNS: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '×': '*',
  '·': '*',
  '÷': '/',
};

/** A whole number with a fraction, '2 1/2', a number, a sign or bracket, or a word. */
const TOKEN =
  /\s*(?:(?<mixed>\d+\s+\d+\/\d+(?![\d.,]))|(?<number>\d+[.,]?\d*|[.,]\d+)|(?<sign>[-+*/()−–×·÷])|(?<word>\p{L}+|["″]))/uy;

/** More than this is no reading any more. */
const MOST_CHARACTERS = 40;
const MOST_DIGITS = 15;

/** An expression in one way of writing, or what is wrong with the text in plain words. */
export type ExpressionChecked =
  | { readonly ok: true; readonly expression: string }
  | { readonly ok: false; readonly message: string };

/**
 * Lets nothing pass but numbers, + − × / ( ) and units of length: no names, functions or
 * assignments. Units are written by their names in `UNIT_WORTHS`, numbers with a decimal point, and
 * a whole number with a fraction, as inches are, as their sum.
 */
export function checkExpression(text: string): ExpressionChecked {
  const trimmed = text.trim();
  if (trimmed.length > MOST_CHARACTERS) return refuse(`At most ${MOST_CHARACTERS} characters`);
  if (/\..*,|,.*\./.test(trimmed)) return refuse('Two kinds of decimal mark: keep to one');
  const parts: string[] = [];
  let before: Kind = 'sign';
  const tokens = new RegExp(TOKEN);
  while (tokens.lastIndex < trimmed.length) {
    const token = tokens.exec(trimmed)?.groups;
    if (token === undefined) return refuse('Numbers, + − × / ( ) and units only');
    const part = partOf(token, before);
    if (!part.ok) return part;
    parts.push(part.text);
    before = part.kind;
  }
  if (before === 'sign') return refuse(`A number is missing after “${trimmed.slice(-1)}”`);
  return { ok: true, expression: parts.join(' ') };
}

/** What a part of an expression is, as far as it matters for what may follow. A closing bracket ends a value. */
type Kind = 'sign' | 'value' | 'unit';

type Part =
  | { readonly ok: true; readonly kind: Kind; readonly text: string }
  | { readonly ok: false; readonly message: string };

function partOf(token: Readonly<Record<string, string | undefined>>, before: Kind): Part {
  const { mixed, number, sign, word } = token;
  if (sign !== undefined) {
    if (sign === '(' && before !== 'sign') return refuse('Before a bracket: + − × or /');
    return { ok: true, kind: sign === ')' ? 'value' : 'sign', text: SIGNS[sign] ?? sign };
  }
  if (mixed !== undefined || number !== undefined) {
    if (before !== 'sign') return refuse('Between two numbers: + − × or /');
    return mixed === undefined ? numberPart(number ?? '') : mixedPart(mixed);
  }
  const unit = UNITS[(word ?? '').toLowerCase()];
  if (unit === undefined) return refuse(`“${word}” is no unit: µm, mm, tenths, thou or in`);
  if (before !== 'value') return refuse(`A number is missing before “${word}”`);
  return { ok: true, kind: 'unit', text: unit };
}

function numberPart(number: string): Part {
  if (number.length > MOST_DIGITS) return refuse('Too many digits');
  const [whole, fraction] = number.split(/[.,]/);
  return { ok: true, kind: 'value', text: `${whole || '0'}.${fraction || '0'}` };
}

/** '2 1/2': a whole number and what is left of the next one. */
function mixedPart(mixed: string): Part {
  const [whole = '', top = '', bottom = ''] = mixed.split(/\s+|\//);
  if (mixed.length > MOST_DIGITS) return refuse('Too many digits');
  if (Number(top) >= Number(bottom)) {
    return refuse('After a whole number, a fraction less than 1: 2 1/2');
  }
  return { ok: true, kind: 'value', text: `(${whole}.0 + ${top}.0 / ${bottom}.0)` };
}

function refuse(message: string) {
  return { ok: false, message } as const;
}
