import { describe, expect, it } from 'vitest';
import { fieldOfReading } from '../../src/entry/field-of-reading';
import { readPart } from '../../src/entry/read-part';
import { readSetups } from '../../src/entry/read-setups';
import { readingNames } from '../../src/entry/reading-names';
import { BLOCK } from '../state/support/inspections';
import { columnSetup, micrometerSetup, noseSetup } from './support/setups';

const SETUPS = [
  noseSetup(),
  columnSetup(),
  micrometerSetup([
    ['5', '', '60'],
    ['85', '', '60.001'],
  ]),
];

describe('the field of a reading', () => {
  it('is there for every reading that was typed, another for each', () => {
    const { part } = readPart(BLOCK);
    const { readings } = readSetups(SETUPS, part!);
    const fields = readings.map(({ id }) => fieldOfReading(SETUPS, id));
    expect(fields.length).toBeGreaterThan(7);
    expect(fields).not.toContain(undefined);
    expect(new Set(fields).size).toBe(fields.length);
  });

  it('is none for how the block sat, which has a name and no field', () => {
    const named = [...readingNames(SETUPS)].filter(([, name]) =>
      name.endsWith('how the block sat'),
    );
    expect(named.length).toBeGreaterThan(0);
    for (const [id] of named) expect(fieldOfReading(SETUPS, id)).toBeUndefined();
  });
});
