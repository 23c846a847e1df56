import { describe, expect, it } from 'vitest';
import { newSetup } from '../../src/entry/new-setup';
import { anyWrong } from '../../src/entry/problems';
import { readSetups } from '../../src/entry/read-setups';
import type { SetupKind } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { PART } from './support/part';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { told } from './support/told';
import { micro } from './support/typed';

const KINDS: readonly SetupKind[] = ['nose comparator', 'column', 'micrometer', 'assumed parallel'];

describe('a setup with nothing typed yet', () => {
  it.each(KINDS)('of the kind %s gives no reading, and nothing is wrong', (kind) => {
    const units = { size: 'mm', reading: 'µm' } as const;
    const setup = newSetup(kind, ['right', 'left'], 'bottom', units, countedIds());
    const { readings, problems } = readSetups([setup], PART);
    expect(readings).toEqual([]);
    expect(anyWrong(problems)).toBe(false);
  });
});

describe('several setups', () => {
  const setups = [
    noseSetup(),
    columnSetup(),
    micrometerSetup([['10', '', '60']]),
    assumption(micro('1')),
  ];

  it('give the readings of all of them, in their order', () => {
    expect(readSetups(setups, PART).readings.map(({ kind }) => kind)).toEqual([
      'nose comparator',
      'nose comparator',
      'column',
      'column',
      'column',
      'column',
      'micrometer',
      'assumed parallel',
    ]);
  });

  it('each have their own problems', () => {
    const { problems } = readSetups(
      [noseSetup({ left: 'x' }), columnSetup({ right: ['', '3'] })],
      PART,
    );
    expect(Object.values(told(problems)).map(({ kind }) => kind)).toEqual(['wrong', 'missing']);
    expect(anyWrong(problems)).toBe(true);
  });

  it('may be none', () => {
    const { readings, problems } = readSetups([], PART);
    expect(readings).toEqual([]);
    expect(told(problems)).toEqual({});
  });
});
