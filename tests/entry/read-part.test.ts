import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { isReady, readPart } from '../../src/entry/read-part';
import { noUnit } from './support/no-unit';
import { asked, ENTRY } from './support/part';
import { missing, told, wrong } from './support/told';
import { inch, micro, mm } from './support/typed';

describe('a part that is typed in full', () => {
  const entry = {
    ...ENTRY,
    size: { x: mm('60'), y: mm('40,5'), z: inch('3.5') },
    requirements: [asked('right', 'bottom', mm('0.005')), asked('top', 'bottom', micro('12'))],
    finished: ['top'] as const,
  };
  const read = readPart(entry);

  it('has sizes in mm and tolerances in µm, whatever they were typed in', () => {
    expect(read.part).toEqual({
      // 11.7: steel, as nothing else is said.
      block: { size: { x: 60, y: 40.5, z: 88.9 }, expansion: 11.7 },
      datum: 'bottom',
      requirements: [
        { id: 'right to bottom', face: 'right', datum: 'bottom', tolerance: 5 },
        { id: 'top to bottom', face: 'top', datum: 'bottom', tolerance: 12 },
      ],
      finished: ['top'],
    });
  });

  it('has nothing against it and is ready', () => {
    expect(told(read.problems)).toEqual({});
    expect(isReady(read)).toBe(true);
  });

  it('is the same part in inches as in mm', () => {
    const size = { x: inch('2'), y: inch('1'), z: inch('3.5') };
    const same = { x: mm('50.8'), y: mm('25.4'), z: mm('88.9') };
    expect(readPart({ ...ENTRY, size })).toEqual(readPart({ ...ENTRY, size: same }));
  });
});

describe('a size', () => {
  const at = (z: string) => readPart({ ...ENTRY, size: { ...ENTRY.size, z: mm(z) } });

  it('that is not there leaves no part, and is asked for without calling it wrong', () => {
    const read = at(' ');
    expect(read.part).toBeUndefined();
    expect(told(read.problems)).toEqual({
      [fieldKey.size('z')]: missing('Needed first'),
    });
    expect(isReady(read)).toBe(false);
  });

  it.each([
    ['90cm', noUnit('cm')],
    ['9,0.0', 'Two decimal marks: keep one'],
    ['0', 'Under 0.5 mm: too thin to stand on a plate'],
    ['-90', 'Under 0.5 mm: too thin to stand on a plate'],
    ['0.499', 'Under 0.5 mm: too thin to stand on a plate'],
    ['3000.1', 'Over 3 m: check the size and the unit'],
  ])('%j leaves no part: %s', (text, message) => {
    const read = at(text);
    expect(read.part).toBeUndefined();
    expect(told(read.problems)).toEqual({ [fieldKey.size('z')]: wrong(message) });
  });

  it.each([
    ['0.5', 0.5],
    ['3000', 3000],
  ])('of %s mm is still one', (text, z) => {
    expect(at(text).part?.block.size.z).toBe(z);
  });
});

describe('a line of the drawing', () => {
  const read = (line: ReturnType<typeof asked>) =>
    readPart({ ...ENTRY, requirements: [line, asked('back', 'bottom')] });

  it.each([
    [micro('0'), wrong('A tolerance is above 0')],
    [micro('-5'), wrong('A tolerance is above 0')],
    [mm('1.001'), wrong('Over 1 mm: check the tolerance and the unit')],
    [micro('5 x'), wrong(noUnit('x'))],
    [micro(''), missing('How much does the drawing allow?')],
  ])('within %o is left out, and the others stand', (tolerance, problem) => {
    const { part, problems } = read(asked('right', 'bottom', tolerance));
    expect(part?.requirements.map(({ id }) => id)).toEqual(['back to bottom']);
    expect(told(problems)).toEqual({ [fieldKey.tolerance('right to bottom')]: problem });
  });

  it('cannot have its own face for datum', () => {
    const { part, problems } = read(asked('right', 'right'));
    expect(part?.requirements.map(({ id }) => id)).toEqual(['back to bottom']);
    expect(told(problems)).toEqual({
      [fieldKey.faces('right to right')]: wrong('A face cannot be its own datum'),
    });
  });

  it('that is wrong means that the part is not ready, one that is unfinished does not', () => {
    expect(isReady(read(asked('right', 'bottom', micro('0'))))).toBe(false);
    expect(isReady(read(asked('right', 'bottom', micro(''))))).toBe(true);
  });
});

it('a part without a name is asked for one, and can be measured all the same', () => {
  const read = readPart({ ...ENTRY, name: '  ' });
  expect(told(read.problems)).toEqual({ [fieldKey.name()]: missing('Name it, to find it again') });
  expect(isReady(read)).toBe(true);
});

describe('a face that is to be flat', () => {
  const flat = (text: string) =>
    readPart({ ...ENTRY, flatness: [{ id: 'flat', face: 'bottom', tolerance: mm(text) }] });

  it('is read with its tolerance in µm, and has no datum', () => {
    expect(flat('0,003').part?.flatness).toEqual([{ id: 'flat', face: 'bottom', tolerance: 3 }]);
    expect(readPart({ ...ENTRY, flatness: [] }).part).not.toHaveProperty('flatness');
  });

  it.each([
    ['', missing('How much does the drawing allow?')],
    ['0', wrong('A tolerance is above 0')],
    ['1.1', wrong('Over 1 mm: check the tolerance and the unit')],
  ])('within ‘%s’ is left out, and says why', (text, problem) => {
    const read = flat(text);
    expect(read.part).not.toHaveProperty('flatness');
    expect(told(read.problems)).toEqual({ [fieldKey.tolerance('flat')]: problem });
  });
});
