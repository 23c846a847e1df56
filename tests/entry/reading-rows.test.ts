import { describe, expect, it } from 'vitest';
import { readingRows } from '../../src/entry/reading-rows';
import { overFaceSetup } from './support/over-face';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { micro, mm } from './support/typed';

describe('every reading as it was entered', () => {
  it('stands in a row of its own, with what it was set up with', () => {
    const rows = readingRows([noseSetup({ right: '34', left: '31' }), assumption(micro('1'))]);
    expect(rows).toHaveLength(3);
    expect(rows[0]).toMatchObject({
      ...{ name: 'Right side', kind: 'nose comparator', setup: 1, placing: 1, face: 'right' },
      ...{ base: 'bottom', value: { text: '34', unit: 'µm' } },
    });
    expect(rows[2]).toMatchObject({ kind: 'assumed parallel', setup: 2, opposite: 'left' });
  });

  it('is named as it may have been left out: alone, or with all of its placing', () => {
    const column = columnSetup();
    const [first] = readingRows([column]);
    const [placing] = column.placings;
    const [height] = column.heights;
    expect(first?.leftOutAs[0]).toBe(`${placing!.id} ${height!.id}`);
    expect(first?.leftOutAs).toHaveLength(2);
    expect(readingRows([column])).toHaveLength(column.placings.length * column.heights.length);
  });

  it('tells each height of each time that the block stood at the column', () => {
    const rows = readingRows([columnSetup()]);
    expect(
      rows.map(({ placing, face, base, height, value }) => [placing, face, base, height, value]),
    ).toEqual([
      [1, 'right', 'bottom', mm('10'), micro('4')],
      [1, 'right', 'bottom', mm('80'), micro('31')],
      [2, 'left', 'bottom', mm('10'), micro('7')],
      [2, 'left', 'bottom', mm('80'), micro('24')],
    ]);
  });

  it('tells how far from which edge it was taken, and over what', () => {
    const over = overFaceSetup([['5', '12', '3']]);
    const [thickness, top, map] = readingRows([
      micrometerSetup([['10', '15', '60.002']]),
      over,
      { ...over, kind: 'face map' },
    ]);
    expect(thickness).toMatchObject({
      ...{ kind: 'micrometer', id: 'place 1', face: 'right', opposite: 'left' },
      ...{ up: mm('10'), across: mm('15'), value: mm('60.002') },
    });
    const read = { face: 'top', up: mm('5'), across: mm('12'), value: micro('3') };
    expect(top).toMatchObject({ ...read, kind: 'over the top', base: 'bottom' });
    expect(map).toMatchObject({ ...read, kind: 'face map' });
    // On jacks it stands on no face.
    expect(map).not.toHaveProperty('base');
  });
});
