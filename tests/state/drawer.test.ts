import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { IndicatorEntry } from '../../src/entry/instruments';
import type { NoseComparatorSetup } from '../../src/entry/setup-entry';
import { workOut } from '../../src/state/answers';
import { chain, openChain } from '../../src/state/chain';
import {
  addItem,
  chooseForKit,
  drawer,
  lastTakenOut,
  ownAbrasives,
  putBackItem,
  putItem,
  removeItem,
  takeKitAtPlate,
} from '../../src/state/drawer';
import { beginInspection, closeInspection } from '../../src/state/inspections';
import { addKit, kit, setKitName, takeKit } from '../../src/state/kits';
import { openShop } from '../../src/state/open-shop';
import { shop } from '../../src/state/shop';
import { save } from '../../src/store/shop-store';
import { micro, mm } from '../entry/support/typed';
import { storedAt } from '../store/support/database';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(async () => {
  await startAfresh();
  await openShop();
});
// What is still on its way to the disk must not come to the next test.
afterEach(() => saving('saved'));

function newIndicator(changed: Partial<IndicatorEntry>): IndicatorEntry {
  const item = { ...(addItem('indicator') as IndicatorEntry), ...changed };
  putItem(item);
  return item;
}

describe('a thing in the drawer', () => {
  it('is entered once, chosen for a kit, and changes with it', async () => {
    const dial = newIndicator({ name: 'Dial', indicatorError: micro('2') });
    chooseForKit('indicator', dial.id);
    expect(kit.value?.indicatorError).toBe(2);
    addKit();
    putItem({ ...dial, name: 'Dial 7', indicatorError: micro('4') });
    expect(kit.value?.indicatorError).toBe(4);
    expect(shop.value.kit.chosen?.indicator?.name).toBe('Dial 7');
    expect(shop.value.otherKits?.[0]?.kit.indicatorError).toEqual(micro('4'));
    await saving('saved');
    expect(await storedAt('shop')).toEqual(shop.value);
  });

  it('that is removed is put back where it lay, and into the kits that had it', () => {
    const dial = newIndicator({ name: 'Dial', indicatorError: micro('2') });
    newIndicator({ name: 'Other' });
    chooseForKit('indicator', dial.id);
    addKit();
    const before = shop.value;
    removeItem(dial);
    expect(shop.value.kit.chosen?.indicator).toBeUndefined();
    expect(drawer.value.map(({ name }) => name)).toEqual(['Other']);
    putBackItem(lastTakenOut.value!);
    expect(shop.value).toMatchObject({
      drawer: before.drawer,
      kit: before.kit,
      otherKits: before.otherKits,
    });
    expect(lastTakenOut.value).toBeUndefined();
  });

  it('that is removed and put back leaves a kit as it was changed since', () => {
    const dial = newIndicator({ name: 'Dial', indicatorError: micro('2') });
    const other = newIndicator({ name: 'Other', indicatorError: micro('3') });
    chooseForKit('indicator', dial.id);
    removeItem(dial);
    chooseForKit('indicator', other.id);
    putBackItem(lastTakenOut.value!);
    expect(drawer.value.map(({ name }) => name)).toEqual(['Dial', 'Other']);
    expect(kit.value?.indicatorError).toBe(3);
  });

  it('that is half typed leaves the kits as they are', () => {
    const dial = newIndicator({ name: 'Dial', indicatorError: micro('2') });
    chooseForKit('indicator', dial.id);
    putItem({ ...dial, indicatorError: micro('2.') });
    putItem({ ...dial, indicatorError: micro('') });
    expect(kit.value?.indicatorError).toBe(2);
  });

  it('that is removed leaves its figures in the kits', () => {
    const dial = newIndicator({ name: 'Dial', indicatorError: micro('2') });
    chooseForKit('indicator', dial.id);
    removeItem(dial);
    expect(drawer.value).toEqual([]);
    expect(shop.value.kit.chosen?.indicator).toBeUndefined();
    expect(kit.value?.indicatorError).toBe(2);
  });

  it('is suggested where it is an abrasive', () => {
    const paper = addItem('abrasive');
    if (paper.kind !== 'abrasive') throw new Error('Not an abrasive');
    expect(ownAbrasives.value).toEqual([]);
    putItem({ ...paper, grit: 'P400', name: 'paper' });
    expect(ownAbrasives.value).toEqual(['P400 paper']);
  });
});

describe('readings', () => {
  it('begin with what the kit has, by name', async () => {
    const dial = newIndicator({ name: 'Dial', plus: 'let out' });
    const comparator = addItem('comparator');
    putItem({ ...comparator, name: 'Tall one' });
    chooseForKit('indicator', dial.id);
    chooseForKit('comparator', comparator.id);
    await save([part('p')]);
    await openChain('p');
    const [setup] = beginInspection('p', BLOCK).setups;
    expect(setup).toMatchObject({
      indicator: { name: 'Dial', plus: 'let out' },
      instrument: { id: comparator.id, name: 'Tall one' },
    });
  });

  it('stay what they were when another kit is taken, or the instrument changes in the drawer', async () => {
    const dial = newIndicator({ name: 'Dial', plus: 'let out', indicatorError: mm('0.002') });
    addKit();
    setKitName('Other way round');
    chooseForKit('indicator', dial.id);
    takeKit(0);
    await save([part('p'), compared('i', '34', '31')]);
    await openChain('p');
    const now = () =>
      chain.value?.links.find(({ id }) => id === 'i') as ReturnType<typeof compared>;
    const lean = () => workOut(now(), BLOCK).answer?.sides[0]?.outOfSquare[0]?.value;
    const before = lean();
    expect(before).toBeGreaterThan(0);
    takeKitAtPlate(0, now());
    expect(shop.value.kitName).toBe('Other way round');
    expect(lean()).toBe(before);
    const [setup] = now().setups as readonly NoseComparatorSetup[];
    expect(setup?.indicator).toMatchObject({ name: 'Kit 1', plus: 'pushed in' });
    closeInspection(now(), BLOCK);
    putItem({ ...dial, indicatorError: mm('0.5') });
    expect(lean()).toBe(before);
  });
});
