import { computed, signal } from '@preact/signals';
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

/** What was taken out of the drawer last: where it lay, and each kit that had it, by the kit without it. */
interface TakenOut {
  readonly item: DrawerItem;
  readonly place: number;
  readonly kits: ReadonlyMap<KitEntry, KitEntry>;
}

export const lastTakenOut = signal<TakenOut | undefined>(undefined);

/** Takes a thing out of the drawer and its kits. Readings that were taken with it keep its figures. */
export function removeItem(item: DrawerItem): void {
  const kits = new Map<KitEntry, KitEntry>();
  const without = (kit: KitEntry) => {
    if (!isOfKit(item) || !hasItem(kit, item)) return kit;
    const left = withoutItem(kit, item.kind);
    kits.set(left, kit);
    return left;
  };
  lastTakenOut.value = { item, place: drawer.value.findIndex(({ id }) => id === item.id), kits };
  putShop({ drawer: drawer.value.filter(({ id }) => id !== item.id), ...kitsWith(without) });
}

/** Puts back what was taken out last, into the kits too that have not been changed since. */
export function putBackItem({ item, place, kits }: TakenOut): void {
  const others = drawer.value.filter(({ id }) => id !== item.id);
  putShop({
    drawer: [...others.slice(0, place), item, ...others.slice(place)],
    ...kitsWith((kit) => kits.get(kit) ?? kit),
  });
  lastTakenOut.value = undefined;
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
