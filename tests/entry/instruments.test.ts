import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/core/part/part';
import { abrasiveName, type IndicatorEntry, newItem } from '../../src/entry/instruments';
import { defaultKit } from '../../src/entry/kit-entry';
import { itemOf, withItem, withoutItem } from '../../src/entry/kit-items';
import { problemsOf } from '../../src/entry/read-instrument';
import { readKit } from '../../src/entry/read-kit';
import { readPart } from '../../src/entry/read-part';
import { readSetups } from '../../src/entry/read-setups';
import { instrumentPartsOf, onChangeOfKit, readWithItem } from '../../src/entry/read-with';
import { namesWithSign } from '../../src/entry/reading-names';
import type { SetupEntry } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { ENTRY } from './support/part';
import { columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { told } from './support/told';
import { micro, mm, tenths } from './support/typed';

const PART = readPart(ENTRY).part as Part;

function indicator(changed: Partial<IndicatorEntry> = {}): IndicatorEntry {
  return { ...(newItem('indicator', countedIds()) as IndicatorEntry), name: 'Dial 3', ...changed };
}

function read(...setups: readonly SetupEntry[]) {
  const { readings, problems } = readSetups(setups, PART);
  const values = readings.map((reading) => ('value' in reading ? reading.value : undefined));
  return { readings, values, problems: told(problems) };
}

describe('an indicator that counts the other way', () => {
  const turned = indicator({ plus: 'let out' });

  it('gives its readings with the sign turned, and says so in their names', () => {
    const setup = { ...noseSetup({ right: '-34', left: '0' }), indicator: turned };
    expect(read(setup).values).toEqual([34, 0]);
    expect(Object.is(read(setup).values[1], 0)).toBe(true);
    expect([...namesWithSign([setup]).values()]).toEqual([
      'Right side (sign turned)',
      'Left side (sign turned)',
    ]);
    expect(read({ ...columnSetup(), indicator: turned }).values).toEqual([-4, -31, -7, -24]);
  });

  it('leaves alone what is typed, and setups that were read with another', () => {
    expect(read(noseSetup(), { ...columnSetup(), indicator: turned }).values.slice(0, 2)).toEqual([
      34, 31,
    ]);
    expect(read({ ...noseSetup(), indicator: indicator() }).values).toEqual([34, 31]);
  });
});

describe('the figures of a setup’s own instrument', () => {
  it('come with its readings, a plunger without any angle', () => {
    const own = indicator({ indicatorResolution: tenths('0.5'), leverAngle: '30' });
    const [first] = read({ ...noseSetup(), indicator: own }).readings;
    expect(first?.instrument).toEqual({
      indicatorResolution: 1.27,
      indicatorError: 0.5,
      leverAngle: 0,
      leverWithin: 0,
    });
    const lever = { ...noseSetup(), indicator: { ...own, lever: true } };
    expect(read(lever).readings[0]?.instrument?.leverAngle).toBe(30);
  });

  it('are not there where the setup names none', () => {
    const { readings } = read(noseSetup(), micrometerSetup([['5', '', '60.001']]));
    expect(readings).toHaveLength(3);
    expect(readings.some(({ instrument }) => instrument !== undefined)).toBe(false);
  });

  it('that cannot be read leave no reading, and it is said at the choice', () => {
    const bad = { ...noseSetup(), indicator: indicator({ indicatorError: mm('x') }) };
    expect(read(bad).readings).toEqual([]);
    expect(read(bad).problems['read with nose']?.kind).toBe('wrong');
  });
});

describe('the range of an indicator', () => {
  const within = (right: string, left: string, range = mm('0.4')) =>
    read({ ...noseSetup({ right, left }), indicator: indicator({ range }) });

  it('warns of a reading beyond it and lets it stand', () => {
    const { values, problems } = within('100', '-401');
    expect(values).toEqual([100, -401]);
    expect(problems['reading on left']).toEqual({
      kind: 'doubtful',
      message: 'Beyond the 0.4 mm that Dial 3 travels. Check the figure and the unit',
    });
    expect(problems['reading on right']).toBeUndefined();
  });

  it('warns of two readings further apart than it travels', () => {
    expect(within('300', '-150').problems['reading on left']?.message).toBe(
      'Further from the first reading than the 0.4 mm that Dial 3 travels',
    );
  });

  it('says nothing within it, at it, or where it is not known', () => {
    expect(within('200', '-200').problems).toEqual({});
    expect(within('400', '0').problems).toEqual({});
    expect(within('1000', '-1', mm('')).problems).toEqual({});
  });
});

describe('a kit', () => {
  it('takes the figures of what is chosen for it, and keeps them without it', () => {
    const own = indicator({ indicatorError: micro('2'), lever: true, leverAngle: '15' });
    const kit = withItem(defaultKit(), own);
    expect(kit.chosen?.indicator).toEqual({ id: own.id, name: 'Dial 3' });
    expect(readKit(kit).kit).toMatchObject({ indicatorError: 2, leverAngle: 15 });
    expect(itemOf(kit, 'indicator', [own])).toBe(own);
    expect(itemOf(kit, 'column', [own])).toBeUndefined();
    const without = withoutItem(kit, 'indicator');
    expect(without.chosen?.indicator).toBeUndefined();
    expect(readKit(without).kit).toEqual(readKit(kit).kit);
  });

  it('knows a plate by its grade', () => {
    const plate = newItem('plate', countedIds());
    if (plate.kind !== 'plate') throw new Error('Not a plate');
    const kit = withItem(defaultKit(), { ...plate, plateKind: 'ISO 8512 grade 1' });
    expect(readKit(kit).kit?.plateOverall?.flatness).toBeGreaterThan(0);
    expect(problemsOf({ ...plate, plateKind: 'ISO 8512 grade 1', plateLength: mm('') }).size).toBe(
      1,
    );
  });
});

describe('another kit at the plate', () => {
  const lever = indicator({ id: 'lever', name: 'Lever', lever: true, leverAngle: '20' });
  const before = { kit: { ...defaultKit(), indicatorError: micro('3') }, name: 'Kit 1' };
  const after = withItem(defaultKit(), lever);

  it('is what goes unread yet is read with', () => {
    const unread = { ...noseSetup({ right: '', left: '' }), indicator: indicator() };
    expect(onChangeOfKit(unread, before, after, [lever])).toMatchObject({ indicator: lever });
    expect(onChangeOfKit(unread, before, defaultKit(), [lever])).not.toHaveProperty('indicator');
  });

  it('changes nothing of what has been read', () => {
    const now = onChangeOfKit(noseSetup({ left: '' }), before, after, [lever]);
    const [reading] = read(now).readings;
    expect(reading?.instrument).toMatchObject({ indicatorError: 3, leverAngle: 0 });
    expect(instrumentPartsOf(now)[1]?.chosen?.name).toBe('Kit 1');
    const named = { ...noseSetup(), indicator: indicator() };
    expect(onChangeOfKit(named, before, after, [lever])).toEqual(named);
    const over = onChangeOfKit(micrometerSetup([['5', '', '60']]), before, after, [lever]);
    expect(over.micrometer).toMatchObject({ name: 'Kit 1', micrometerError: micro('0.5') });
  });

  it('can be put right on the sheet', () => {
    const chosen = readWithItem(noseSetup(), 'indicator', lever);
    expect(chosen.indicator).toBe(lever);
    expect(readWithItem(chosen, 'indicator', undefined)).toEqual(noseSetup());
    const comparator = { kind: 'comparator', id: 'c', name: 'Tall one' } as const;
    expect(readWithItem(noseSetup(), 'comparator', comparator).instrument).toEqual({
      id: 'c',
      name: 'Tall one',
    });
  });
});

it('an abrasive is written as the trade does', () => {
  const item = { kind: 'abrasive', id: 'a', grit: 'P400 ', name: ' paper' } as const;
  expect(abrasiveName(item)).toBe('P400 paper');
  expect(abrasiveName({ ...item, grit: '' })).toBe('paper');
});
