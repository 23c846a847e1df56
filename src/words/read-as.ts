import { readLengthText } from '../entry/length-text';
import { lengthIn, type TypedLength } from '../entry/typed-length';

/** What a sum, or a text with a unit of its own, is read as: '= 5.08 µm'. A plain number says it itself. */
export function readAs({ text, unit }: TypedLength): string | undefined {
  const read = readLengthText(text, unit);
  if (read.kind !== 'length' || read.from === 'number') return undefined;
  return `= ${lengthIn(read.length, unit).replace('-', '−')} ${unit}`;
}
