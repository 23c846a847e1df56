import { computed } from '@preact/signals';
import { abrasiveName, type DrawerItem, type DrawerKind, newItem } from '../entry/instruments';
import type { ChosenKind, KitEntry } from '../entry/kit-entry';
import { hasItem, type KitItem, withItem, withoutItem } from '../entry/kit-items';
import { problemsOf } from '../entry/read-instrument';
import { onChangeOfKit } from '../entry/read-with';
import type { InspectionRecord } from '../store/records';
import { kitName, setKit, takeKit } from './kits';
import { convertSetups } from './plate-changes';
import { newId, putShop, shop } from './shop';

/** The shop's instruments, plates and abrasives, in the order they came. */
export const drawer = computed<readonly DrawerItem[]>(() => shop.value.drawer ?? []);

/** What can be chosen out of it: what has its figures, all of them readable. */
export const choosable = computed(() => drawer.value.filter((item) => problemsOf(item).size === 0));

/** The shop's abrasives as they are written down with work. */
export const ownAbrasives = computed(() =>
  drawer.value.flatMap((item) => (item.kind === 'abrasive' ? abrasiveName(item) || [] : [])),
);

/** A thing more in the drawer, with the figures of common practice. */
export function addItem(kind: DrawerKind): DrawerItem {
  const item = newItem(kind, newId);
  putShop({ drawer: [...drawer.value, item] });
  return item;
}

/** Changes a thing in the drawer, and every kit that has it, unless a figure of it is wrong by now. */
export function putItem(item: DrawerItem): void {
  const changed = drawer.value.map((other) => (other.id === item.id ? item : other));
  const isSound = problemsOf(item).size === 0;
  putShop({
    drawer: changed,
    ...kitsWith((kit) =>
      isSound && isOfKit(item) && hasItem(kit, item) ? withItem(kit, item) : kit,
    ),
  });
}

/** Takes a thing out of the drawer for good. Readings that were taken with it keep its figures. */
export function removeItem(item: DrawerItem): void {
  putShop({
    drawer: drawer.value.filter(({ id }) => id !== item.id),
    ...kitsWith((kit) => (isOfKit(item) && hasItem(kit, item) ? withoutItem(kit, item.kind) : kit)),
  });
}

/** The kit in use gets this thing of its kind, or none. */
export function chooseForKit(kind: ChosenKind, id: string): void {
  const item = drawer.value.find((one): one is KitItem => one.kind === kind && one.id === id);
  const { kit } = shop.value;
  setKit(item === undefined ? withoutItem(kit, kind) : withItem(kit, item));
}

/**
 * Takes another kit at the plate. What has been read already stays with what it was read with; the
 * rest of the readings goes on with the kit that is taken.
 */
export function takeKitAtPlate(index: number, inspection: InspectionRecord): void {
  const before = { kit: shop.value.kit, name: kitName.value };
  takeKit(index);
  const { kit } = shop.value;
  // No change to take back: what was read with the kit before stays marked with it, whatever is taken back.
  convertSetups(inspection, (setups) =>
    setups.map((setup) => onChangeOfKit(setup, before, kit, drawer.value)),
  );
}

function kitsWith(change: (kit: KitEntry) => KitEntry) {
  const { kit, otherKits } = shop.value;
  return {
    kit: change(kit),
    ...(otherKits && {
      otherKits: otherKits.map((other) => ({ ...other, kit: change(other.kit) })),
    }),
  };
}

function isOfKit(item: DrawerItem): item is KitItem {
  return item.kind !== 'abrasive';
}
