import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { readSetups } from '../../src/entry/read-setups';
import type { TypedLength } from '../../src/entry/typed-length';
import { noUnit } from './support/no-unit';
import { PART } from './support/part';
import { assumption } from './support/setups';
import { missing, told, wrong } from './support/told';
import { micro, mm, tenths } from './support/typed';

function read(within: TypedLength) {
  const { readings, problems } = readSetups([assumption(within)], PART);
  return { readings, problems: told(problems) };
}

describe('the word that two faces are parallel', () => {
  it.each([
    [micro('2'), 2],
    [mm('0.002'), 2],
    [tenths('1'), 2.54],
    [micro('0.01'), 0.01],
    [mm('1'), 1000],
  ])('%o is within %d µm', (typed, within) => {
    expect(read(typed)).toEqual({
      readings: [{ kind: 'assumed parallel', id: 'word', face: 'right', within }],
      problems: {},
    });
  });

  it.each([
    [micro('0'), 'Above 0: nothing is parallel to the last atom'],
    [micro('-2'), 'Above 0: nothing is parallel to the last atom'],
    [mm('2'), 'Over 1 mm: that is no longer parallel. Check the unit'],
    [micro('few'), noUnit('few')],
    [micro('1,0.5'), 'Two decimal marks: keep one'],
  ])('%o is refused and nothing is assumed: %s', (typed, message) => {
    expect(read(typed)).toEqual({
      readings: [],
      problems: { [fieldKey.within('word')]: wrong(message) },
    });
  });

  it('without an amount is missing it, and nothing is assumed', () => {
    expect(read(micro(''))).toEqual({
      readings: [],
      problems: { [fieldKey.within('word')]: missing('Parallel within how much?') },
    });
  });
});
