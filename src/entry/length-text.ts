import { type LengthUnit, toMicrometres } from '../core/units/length';
import { arithmeticSoFar, type NoSum } from './arithmetic';
import { checkExpression } from './expression';
import { readNumber } from './number';

/** A text that was read as a length, or why it was not. */
export type LengthTextRead =
  | {
      readonly kind: 'length';
      /** µm */
      readonly length: number;
      /** A plain number; a sum, in the unit of the field; or something with a unit of its own. */
      readonly from: 'number' | 'sum' | 'own unit';
    }
  | { readonly kind: 'wrong'; readonly message: string }
  /** What works out sums is not there: it is on its way, or could not be loaded. */
  | { readonly kind: 'waiting' | 'missing'; readonly message: string };

const REASONS: Readonly<Record<NoSum, string>> = {
  'not well formed': 'This does not work out: check the signs and brackets',
  mixed: 'A length and a plain number together: give both a unit, or none',
};

/** What is typed while there is only a number in it, right or wrong. */
const ONLY_NUMBER = /^[+\-−]?[\d.,]*$/;

/**
 * Reads a length typed into a field of `unit`: a number, a sum such as '20+1.5', or either with a
 * unit of its own, which overrides that of the field: '-2 tenths', '0.2 thou + 1 µm'.
 */
export function readLengthText(text: string, unit: LengthUnit): LengthTextRead {
  const plain = readNumber(text);
  if (plain.ok) {
    return { kind: 'length', length: toMicrometres(plain.value, unit), from: 'number' };
  }
  if (ONLY_NUMBER.test(text.trim())) return wrong(plain.message);
  const checked = checkExpression(text);
  return checked.ok ? workOut(checked.expression, unit) : wrong(checked.message);
}

function workOut(expression: string, unit: LengthUnit): LengthTextRead {
  const arithmetic = arithmeticSoFar();
  if (arithmetic === 'waiting') return { kind: 'waiting', message: 'Working it out…' };
  if (arithmetic === 'missing') {
    return {
      kind: 'missing',
      message:
        'Sums and units cannot be worked out before the app is loaded in full. Type a number',
    };
  }
  const sum = arithmetic(expression);
  if (typeof sum === 'string') return wrong(REASONS[sum]);
  if (!Number.isFinite(sum.value)) return wrong('Divided by 0');
  const value = sum.value === 0 ? 0 : sum.value; // no minus zero
  if (sum.power === 1) return { kind: 'length', length: value, from: 'own unit' };
  if (sum.power !== 0) return wrong('Not a length: check the units');
  return { kind: 'length', length: toMicrometres(value, unit), from: 'sum' };
}

function wrong(message: string): LengthTextRead {
  return { kind: 'wrong', message };
}
