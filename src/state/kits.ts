import { computed } from '@preact/signals';
import type { Kit } from '../core/readings/kit';
import type { KitEntry } from '../entry/kit-entry';
import { readKit } from '../entry/read-kit';
import { putShop, shop } from './shop';

/** The kit as numbers, or undefined while a field of it is wrong. */
export const kit = computed<Kit | undefined>(() => readKit(shop.value.kit).kit);

export function setKit(entry: KitEntry): void {
  putShop({ kit: entry });
}

/** What the kit in use is called. */
export const kitName = computed(() => shop.value.kitName ?? FIRST_KIT);

const FIRST_KIT = 'Kit 1';

export function setKitName(name: string): void {
  putShop({ kitName: name });
}

/** Lays the kit in use into the drawer and goes on with a copy of it under a name of its own. */
export function addKit(): void {
  const { kit: inUse, otherKits = [] } = shop.value;
  const drawer = [...otherKits, { name: kitName.value, kit: inUse }];
  putShop({ otherKits: drawer, kitName: `Kit ${drawer.length + 1}` });
}

/** Takes a kit out of the drawer and lays the one in use into it. */
export function takeKit(index: number): void {
  const { kit: inUse, otherKits = [] } = shop.value;
  const taken = otherKits[index];
  if (taken === undefined) throw new RangeError('There is no such kit in the drawer');
  const drawer = otherKits.map((other, place) =>
    place === index ? { name: kitName.value, kit: inUse } : other,
  );
  putShop({ kit: taken.kit, kitName: taken.name, otherKits: drawer });
}
