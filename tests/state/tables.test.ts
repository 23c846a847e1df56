import { expect, it } from 'vitest';
import { readTable } from '../../src/state/tables';

it('a column that is chosen by hand keeps the unit that its heading names, brackets or none', () => {
  for (const heading of ['Indicator at (in)', 'Indicator at in', 'Indicator at [in]']) {
    const { columns, setups } = readTable(
      `face,nose height in,${heading},reading um\nright,0.25,3,34`,
      new Map([[2, 'height']]),
      0,
    );
    expect(columns[2]?.matched).toEqual({ column: 'height', unit: 'in' });
    expect(setups[0]).toMatchObject({
      noseHeight: { text: '0.25', unit: 'in' },
      indicatorHeight: { text: '3', unit: 'in' },
    });
  }
});

it('a heading that is none of ours leaves its column to be chosen, and says what is missing', () => {
  const { problems } = readTable('surface,height,reading\nright,80,34', new Map(), 0);
  expect(problems).toEqual([{ line: 2, message: 'Nothing stands under ‘face’' }]);
});
