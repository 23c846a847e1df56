import { beforeEach, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../src/core/readings/kit';
import { workOut } from '../../src/state/answers';
import { drawer } from '../../src/state/drawer';
import { kit, kitName } from '../../src/state/kits';
import { openShop } from '../../src/state/open-shop';
import { shop } from '../../src/state/shop';
import { putAnything } from '../store/support/database';
import { startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

/* As the first version wrote it, before there was a drawer: every figure as it lay on the disk. */
const FIRST_VERSION = {
  format: 1,
  made: '2024-03-01T08:00:00.000Z',
  kind: 'shop',
  kit: {
    indicatorResolution: { text: '0.5', unit: 'tenths' },
    indicatorError: { text: '0,8', unit: 'µm' },
    seating: { text: '0.4', unit: 'µm' },
    plate: { text: '0.5', unit: 'µm' },
    micrometerResolution: { text: '1', unit: 'µm' },
    micrometerError: { text: '0.5', unit: 'µm' },
    heightSetting: { text: '0.3', unit: 'mm' },
    leverAngle: '12',
    leverWithin: '3',
    warmth: '0.1',
    plateKind: 'stated',
    plateLength: { text: '630', unit: 'mm' },
    plateWidth: { text: '400', unit: 'mm' },
  },
  kitName: 'Lever',
  otherKits: [],
  units: { size: 'mm', deviation: 'µm' },
  level: '95',
};

beforeEach(startAfresh);

it('a shop from before the drawer opens to the same figures and the same numbers', async () => {
  await putAnything('shop', FIRST_VERSION);
  await openShop();
  expect(shop.value.kit).toEqual(FIRST_VERSION.kit);
  expect(kitName.value).toBe('Lever');
  expect(drawer.value).toEqual([]);
  expect(kit.value).toEqual({
    ...DEFAULT_KIT,
    ...{ indicatorResolution: 1.27, indicatorError: 0.8, seating: 0.4 },
    ...{ leverAngle: 12, leverWithin: 3 },
  });
  // 34 and 31 over 74 mm, parallel: half the difference × cos 12° × 90/74, and the mean as the zero.
  const { answer } = workOut(compared('i', '34', '31'), BLOCK);
  const [right] = answer?.sides[0]?.outOfSquare ?? [];
  expect((right?.value ?? 0) * 90).toBeCloseTo(((1.5 * 0.9781476) / 74) * 90, 6);
  expect(answer?.comparators[0]?.estimate?.value).toBeCloseTo(32.5 * 0.9781476, 5);
});
