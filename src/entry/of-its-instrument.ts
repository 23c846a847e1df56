import type { Reading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import type { IndicatorEntry } from './instruments';
import { READING } from './limits';
import { ProblemList } from './problems';
import { readInstrument } from './read-instrument';
import { readLength } from './read-length';
import { isTurned, shownIn } from './read-with';
import type { SetupEntry } from './setup-entry';

/**
 * The readings of a setup as its own instrument gives them: with its figures in place of the kit's,
 * and with the sign turned where it counts the other way. A setup that names none is read with the kit.
 */
export function ofItsInstrument(
  setup: SetupEntry,
  readings: readonly Reading[],
  problems: ProblemList,
): readonly Reading[] {
  const item =
    setup.kind === 'micrometer'
      ? setup.micrometer
      : 'indicator' in setup
        ? setup.indicator
        : undefined;
  if (item === undefined) return readings;
  const { figures, range } = readInstrument(item);
  if (figures === undefined) {
    problems.wrong(fieldKey.readWith(setup.id), 'A figure of it is wrong: choose it again');
    return [];
  }
  if (item.kind === 'indicator' && range !== undefined) warnBeyond(range, item, setup, problems);
  return readings.map((reading) => {
    const own = { ...reading, instrument: figures };
    return isTurned(setup) && 'value' in own ? { ...own, value: -own.value || 0 } : own;
  });
}

/** An indicator cannot show more than it travels, nor two readings further apart. */
function warnBeyond(
  range: number,
  { name, range: typed }: IndicatorEntry,
  setup: SetupEntry,
  problems: ProblemList,
): void {
  // What cannot be read at all has been told already.
  const told = new ProblemList();
  const shown = shownIn(setup).flatMap(({ key, typed: reading }) => {
    const value = readLength(reading, key, told, READING);
    return value === undefined ? [] : [{ key, value }];
  });
  const travel = `the ${typed.text.trim()} ${typed.unit} that ${name.trim() || 'the indicator'} travels`;
  for (const { key, value } of shown) {
    if (Math.abs(value) > range) {
      problems.doubtful(key, `Beyond ${travel}. Check the figure and the unit`);
    } else if (Math.abs(value - (shown[0]?.value ?? value)) > range) {
      problems.doubtful(key, `Further from the first reading than ${travel}`);
    }
  }
}
