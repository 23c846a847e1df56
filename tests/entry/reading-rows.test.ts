import { describe, expect, it } from 'vitest';
import { readingRows } from '../../src/entry/reading-rows';
import { assumption, columnSetup, noseSetup } from './support/setups';
import { micro } from './support/typed';

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
});
