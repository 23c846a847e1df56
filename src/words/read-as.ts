import type { LengthUnit } from '../core/units/length';
import { readLengthText } from '../entry/length-text';
import { lengthIn, type TypedLength } from '../entry/typed-length';

/** What a sum, or a text with a unit of its own, is read as: '= 5.08 µm'. A plain number says it itself. */
export function readAs({ text, unit }: TypedLength): string | undefined {
  const read = readLengthText(text, unit);
  if (read.kind !== 'length' || read.from === 'number') return undefined;
  return `= ${withUnit(lengthIn(read.length, unit), unit)}`;
}

/** A number as it is typed, with a true minus sign and its unit: '1 tenth', '−2 tenths'. */
export function withUnit(value: string, unit: LengthUnit): string {
  return `${value.replace('-', '−')} ${unitAfter(value, unit)}`;
}

function unitAfter(value: string, unit: LengthUnit): string {
  return unit === 'tenths' && Math.abs(Number(value)) === 1 ? 'tenth' : unit;
}

/** A length as it was typed, with the unit of its field unless it has one of its own: '5 µm', '0.005 mm'. */
export function asTyped({ text, unit }: TypedLength): string {
  const typed = text.trim();
  return hasOwnUnit({ text, unit }) ? typed : `${typed} ${unitAfter(typed, unit)}`;
}

/** True where a unit was typed too, which overrides that of the field. */
export function hasOwnUnit({ text, unit }: TypedLength): boolean {
  const read = readLengthText(text, unit);
  return read.kind === 'length' && read.from === 'own unit';
}
