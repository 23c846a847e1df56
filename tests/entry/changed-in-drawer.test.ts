import { describe, expect, it } from 'vitest';
import { changedInDrawer } from '../../src/entry/changed-in-drawer';
import { type IndicatorEntry, newItem } from '../../src/entry/instruments';
import { countedIds } from './support/ids';
import { micro, mm } from './support/typed';

const dial = { ...(newItem('indicator', countedIds()) as IndicatorEntry), name: 'Dial 3' };

describe('what a thing in the drawer says otherwise than its copy in a setup', () => {
  it('is nothing while it is as it was, however its fields are ordered', () => {
    expect(changedInDrawer(dial, dial)).toEqual([]);
    const reversed = Object.fromEntries(Object.entries(dial).reverse()) as typeof dial;
    const { text, unit } = dial.indicatorError;
    expect(changedInDrawer(dial, { ...reversed, indicatorError: { unit, text } })).toEqual([]);
  });

  it.each([
    ['name', 'Dial 4'],
    ['plus', 'let out'],
    ['lever', true],
    ['leverAngle', '12'],
    ['indicatorError', micro('7')],
    ['range', mm('0.4')],
  ] as const)('is its %s', (figure, changed) => {
    expect(changedInDrawer(dial, { ...dial, [figure]: changed })).toEqual([figure]);
  });

  it('is the unit as well, and all that was changed', () => {
    const { text } = dial.indicatorResolution;
    const item = { ...dial, name: 'D', indicatorResolution: { text, unit: 'tenths' } } as const;
    expect(changedInDrawer(dial, item)).toEqual(
      expect.arrayContaining(['name', 'indicatorResolution']),
    );
    expect(changedInDrawer(dial, item)).toHaveLength(2);
  });

  it('is the name alone where a setup keeps no more', () => {
    const was = { id: 'c', name: 'Tall' };
    expect(changedInDrawer(was, { kind: 'comparator', ...was })).toEqual([]);
    expect(changedInDrawer(was, { kind: 'comparator', id: 'c', name: 'Short' })).toEqual(['name']);
  });
});
