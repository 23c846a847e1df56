import { expect, it } from 'vitest';
import { type DrawerItem, type DrawerKind, newItem } from '../../src/entry/instruments';
import { defaultKit } from '../../src/entry/kit-entry';
import { type KitItem, withItem } from '../../src/entry/kit-items';
import { onChangeOfKit, readWithKit } from '../../src/entry/read-with';
import { checkRecord } from '../../src/exchange/shape/check-record';
import { countedIds } from '../entry/support/ids';
import { columnSetup, micrometerSetup, noseSetup } from '../entry/support/setups';
import { inspection, shop } from '../store/support/samples';

const KINDS: readonly DrawerKind[] = [
  ...(['indicator', 'comparator', 'column', 'micrometer', 'plate', 'abrasive'] as const),
];
const newId = countedIds();
const DRAWER = KINDS.map((kind): DrawerItem => {
  return { ...newItem(kind, () => newId().replace(' ', '-')), name: kind };
});
const KIT = DRAWER.filter((item): item is KitItem => item.kind !== 'abrasive').reduce(
  withItem,
  defaultKit(),
);

it('a shop with a drawer, and kits and setups out of it, passes for a record in every field', () => {
  const record = { ...shop(), kit: KIT, drawer: DRAWER, otherKits: [{ name: 'Kit 1', kit: KIT }] };
  expect(checkRecord(record)).toEqual({ ok: true, record });
  expect(checkRecord({ ...record, drawer: [...DRAWER, DRAWER[0]] })).toMatchObject({ ok: false });
});

it('so do readings with their instruments, by name or by the kit they were read with', () => {
  const setups = [noseSetup(), columnSetup(), micrometerSetup([['5', '', '60']])].map(
    (setup, index) => ({ ...setup, id: `setup-${index}` }),
  );
  const withIds = setups.map((setup) =>
    JSON.parse(JSON.stringify(setup).replaceAll(/(on|place) /g, '$1-')),
  );
  for (const change of [
    (setup: (typeof setups)[number]) => readWithKit(setup, KIT, DRAWER),
    (setup: (typeof setups)[number]) => onChangeOfKit(setup, { kit: KIT, name: 'Kit 1' }, KIT, []),
  ]) {
    const record = { ...inspection('i', 'p'), setups: withIds.map(change), dismissed: ['guide'] };
    expect(checkRecord(record)).toEqual({ ok: true, record });
  }
});
