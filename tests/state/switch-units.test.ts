import { beforeEach, describe, expect, it } from 'vitest';
import { chain, openChain } from '../../src/state/chain';
import { parts, shop } from '../../src/state/shop';
import { switchUnits, unitsWithSize } from '../../src/state/switch-units';
import type { PartRecord } from '../../src/store/records';
import { loadChain, loadParts, save } from '../../src/store/shop-store';
import { assumption, noseSetup } from '../entry/support/setups';
import { inch, micro, mm, tenths } from '../entry/support/typed';
import { storedAt } from '../store/support/database';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

const INCHES = { size: 'in', deviation: 'tenths' } as const;
const SIZE = { x: mm('50.8'), y: mm('25.4'), z: mm('88.9') };
const PART: PartRecord = { ...part('p'), entry: { ...BLOCK, size: SIZE } };

const OPEN = {
  ...compared('i', '', ''),
  setups: [
    noseSetup({ nose: '6.35', indicator: '76.2', right: '25.4', left: '-2.54' }),
    assumption(micro('2.54')),
  ],
};

beforeEach(async () => {
  await startAfresh();
  await save([PART, OPEN]);
  parts.value = new Map([['p', PART]]);
  await openChain('p');
});

describe('switching to inches and tenths', () => {
  it('takes the part along', async () => {
    switchUnits(INCHES, PART);
    const size = { x: inch('2'), y: inch('1'), z: inch('3.5') };
    expect(parts.value.get('p')?.entry.size).toEqual(size);
    await saving('saved');
    expect((await loadParts()).records).toEqual([parts.value.get('p')]);
    expect(await storedAt('shop')).toEqual(shop.value);
    expect(shop.value.units).toEqual(INCHES);
  });

  it('takes readings along that are still open', async () => {
    switchUnits(INCHES, PART, OPEN);
    const typed = { nose: '0.25', indicator: '3', right: '10', left: '-1' };
    const units = { size: 'in', reading: 'tenths' } as const;
    const setups = [noseSetup(typed, units), assumption(tenths('1'))];
    expect(chain.value?.links).toEqual([{ ...OPEN, setups }]);
    await saving('saved');
    expect((await loadChain('p')).records).toEqual([{ ...OPEN, setups }]);
  });

  it('and back again leaves all as it was typed', async () => {
    switchUnits(INCHES, PART, OPEN);
    const [link] = chain.value!.links;
    const converted = parts.value.get('p');
    switchUnits({ size: 'mm', deviation: 'µm' }, converted, link as typeof OPEN);
    expect(chain.value?.links).toEqual([OPEN]);
    expect(parts.value.get('p')?.entry.size).toEqual(SIZE);
    await saving('saved');
  });

  it('leaves closed readings as they were read', async () => {
    const closed = { at: '2024-03-05T15:00:00.000Z', part: BLOCK, kit: shop.value.kit };
    const finished = { ...OPEN, closed };
    await save([finished]);
    switchUnits(INCHES, PART, finished);
    await saving('saved');
    expect((await loadChain('p')).records).toEqual([finished]);
    expect(shop.value.units).toEqual(INCHES);
  });

  it('leaves what is not on the screen', async () => {
    switchUnits(INCHES);
    await saving('saved');
    expect((await loadParts()).records).toEqual([PART]);
    expect((await loadChain('p')).records).toEqual([OPEN]);
    expect(chain.value?.links).toEqual([OPEN]);
  });
});

describe('sizes in the other system', () => {
  it.each([
    [{ size: 'mm', deviation: 'µm' }, 'in', 'tenths'],
    [{ size: 'mm', deviation: 'mm' }, 'in', 'thou'],
    [{ size: 'in', deviation: 'tenths' }, 'mm', 'µm'],
    [{ size: 'in', deviation: 'thou' }, 'mm', 'mm'],
  ] as const)('take readings along: %o to %s', (units, size, deviation) => {
    expect(unitsWithSize(units, size)).toEqual({ size, deviation });
  });

  it.each([
    [{ size: 'mm', deviation: 'tenths' }, 'in'],
    [{ size: 'in', deviation: 'µm' }, 'mm'],
    [{ size: 'mm', deviation: 'mm' }, 'mm'],
  ] as const)(
    'leave them where somebody reads the two mixed, or nothing changes: %o to %s',
    (units, size) => {
      expect(unitsWithSize(units, size)).toEqual({ ...units, size });
    },
  );
});
