import type { EquationCheck } from '../core/adjustment/checks';
import type { FixedFlatness } from '../core/inspection/flatness';
import { expanded } from '../core/statistics/coverage';
import { fieldOfReading } from './field-of-reading';
import { isTurned, shownIn } from './read-with';
import type { SetupEntry } from './setup-entry';
import { firstTyped, readTyped, type TypedLength } from './typed-length';

/** How far off a reading is, and how nearly that is known, both in µm and in the sense plunger pushed in. */
export interface Off {
  readonly reading: string;
  readonly by: number;
  readonly within: number;
}

/**
 * What was typed for a reading, with two neighbouring digits the other way round, where that puts it
 * right: 30.061 that is 45 µm off was 30.016.
 */
export function swappedDigits(setups: readonly SetupEntry[], off: Off): string | undefined {
  const field = fieldOfReading(setups, off.reading);
  for (const setup of setups) {
    const shown = shownIn(setup).find(({ key }) => key === field);
    if (shown !== undefined) {
      return swapThatFits(shown.typed, isTurned(setup) ? -off.by : off.by, off.within);
    }
  }
  return undefined;
}

/** The same for a reading that does not agree with the others. */
export function swappedIn(
  setups: readonly SetupEntry[],
  { reading, blunder, standardised }: EquationCheck,
): string | undefined {
  if (blunder === undefined || standardised === undefined) return undefined;
  const standard = Math.abs(blunder / standardised);
  const within = expanded({ standard, degreesOfFreedom: Number.POSITIVE_INFINITY });
  return swappedDigits(setups, { reading, by: blunder, within });
}

/** The same for a place that stands off where all others lie flat: it is to lie with them. */
export function swappedAlone(
  setups: readonly SetupEntry[],
  { lone, zone }: FixedFlatness,
): string | undefined {
  if (lone === undefined) return undefined;
  const { reading, off: by, without } = lone;
  return swappedDigits(setups, { reading, by, within: without / 2 + expanded(zone) });
}

function swapThatFits(typed: TypedLength, by: number, within: number): string | undefined {
  // Put into another unit, the digits are no longer those that somebody typed.
  const own = firstTyped(typed);
  const stands = lengthOf(typed);
  if (stands === undefined) return undefined;
  return swapsOf(own.text).find((text) => {
    const swapped = lengthOf({ text, unit: own.unit });
    return swapped !== undefined && Math.abs(stands - swapped - by) <= within;
  });
}

function lengthOf(typed: TypedLength): number | undefined {
  const read = readTyped(typed);
  return read.kind === 'length' ? read.length : undefined;
}

/** `text` with each two neighbouring digits the other way round, also across the decimal mark. */
function swapsOf(text: string): readonly string[] {
  const pairs = text.matchAll(/(\d)(?=([.,]?)(\d))/g);
  return [...pairs].flatMap(({ index, 1: one, 2: mark = '', 3: other }) => {
    const after = text.slice(index + 2 + mark.length);
    return one === other ? [] : [`${text.slice(0, index)}${other}${mark}${one}${after}`];
  });
}
