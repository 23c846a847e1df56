import { beforeEach, expect, it, vi } from 'vitest';
import { onAllFourSides } from '../../src/entry/four-sides';
import { chain, openChain } from '../../src/state/chain';
import { compare, statesOf } from '../../src/state/compare';
import { closeInspection, reopenInspection } from '../../src/state/inspections';
import { changeSetups } from '../../src/state/plate-changes';
import type { InspectionRecord } from '../../src/store/records';
import { save } from '../../src/store/shop-store';
import { countedIds } from '../entry/support/ids';
import { noseSetup } from '../entry/support/setups';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

it('two inspections stand side by side: what they say, how it changed, and what was typed', () => {
  const { findings, typed } = compare(compared('i', '34', '31'), compared('j', '34', '33'), BLOCK);
  // (34 - 31)/(2 · 74) · 90 and (34 - 33)/(2 · 74) · 90 µm.
  expect(findings.map(({ one, other }) => [one?.zone.width, other?.zone.width])[0]).toEqual([
    expect.closeTo(1.8243, 4),
    expect.closeTo(0.6081, 4),
  ]);
  expect(findings[0]?.change).toBeCloseTo(-1.2162, 4);
  expect(typed.filter(({ differs }) => differs)).toEqual([
    {
      name: 'Left side',
      one: { text: '31', unit: 'µm' },
      other: { text: '33', unit: 'µm' },
      differs: true,
    },
  ]);
  expect(typed.map(({ name }) => name)).toContain('Nose height, right and left');
});

it('sides read from two bases in only one of two inspections find their like by the base', () => {
  const one = compared('i', '34', '31');
  const onFront = noseSetup({ right: '40' }, undefined, 'front');
  const placings = onFront.placings.map((placing) => ({ ...placing, id: `${placing.id}, front` }));
  const other = { ...one, setups: [...one.setups, { ...onFront, placings }] };
  const { typed } = compare(one, other, BLOCK);
  expect(typed.map(({ name, one, other }) => [name, one?.text, other?.text])).toEqual([
    ['Nose height, right and left on bottom', '6', '6'],
    ['Indicator height, right and left on bottom', '80', '80'],
    ['Right side on bottom', '34', '34'],
    ['Left side on bottom', '31', '31'],
    ['right and left taken as parallel', '1', '1'],
    ['Nose height, right and left on front', undefined, '6'],
    ['Indicator height, right and left on front', undefined, '80'],
    ['Right side on front', undefined, '40'],
    ['Left side on front', undefined, '31'],
  ]);
});

it('sides of a comparator that was turned on all four in only one of them find their like', () => {
  const one = compared('i', '34', '31');
  const turned = onAllFourSides(noseSetup(), countedIds());
  const { typed } = compare(one, { ...one, setups: [turned] }, BLOCK);
  const named = (name: string) => typed.find((row) => row.name === name);
  expect(named('Right side on bottom')).toMatchObject({
    one: { text: '34' },
    other: { text: '34' },
  });
  expect(named('Nose height, right and left')).toMatchObject({ differs: false });
});

it('what only one of two inspections has stands alone', () => {
  const word = compared('j', '', '').setups.filter(({ kind }) => kind === 'assumed parallel');
  const { findings, typed } = compare(
    compared('i', '34', '31'),
    { ...compared('j', '', ''), setups: word },
    BLOCK,
  );
  expect(findings.map(({ other, change }) => [other, change])).toEqual([
    [undefined, undefined],
    [undefined, undefined],
  ]);
  expect(findings[0]?.one).toBeDefined();
  expect(typed.find(({ name }) => name === 'Left side')?.other).toBeUndefined();
});

it('what an inspection was finished with before can be compared with what it is', async () => {
  await save([compared('i', '34', '31')]);
  await openChain('p');
  const latest = () => chain.value?.links[0] as InspectionRecord;
  vi.setSystemTime(Date.now() + 1000);
  closeInspection(latest(), BLOCK);
  const { changed } = latest();
  reopenInspection(latest(), 'A slip');
  changeSetups(latest(), () => compared('i', '34', '13').setups);
  const [before, after, ...others] = statesOf(chain.value?.links ?? []);
  expect(others).toEqual([]);
  expect([before?.key, after?.key]).toEqual([`i ${changed}`, 'i']);
  const { typed } = compare(before!.inspection, after!.inspection, BLOCK);
  expect(
    typed.filter(({ differs }) => differs).map(({ one, other }) => [one?.text, other?.text]),
  ).toEqual([['31', '13']]);
  await saving('saved');
});
