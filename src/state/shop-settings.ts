import { computed } from '@preact/signals';
import { type MethodLimitsEntry, usualMethodLimits } from '../entry/method-limits';
import type { EntryUnits } from '../entry/new-setup';
import { readNumber } from '../entry/number';
import type { ShopUnits } from '../store/records';
import { putShop, shop } from './shop';

/** Units that new fields begin with. */
export const entryUnits = computed<EntryUnits>(() => ({
  size: shop.value.units.size,
  reading: shop.value.units.deviation,
}));

/** Per cent that a verdict may be asked to be sure of; below, in and out would hardly differ. */
export const LEVEL_RANGE = { least: 60, most: 99.9 } as const;

/** The least probability for a verdict, or undefined while what is typed is no such number. */
export function readLevel(text: string): number | undefined {
  const read = readNumber(text);
  if (!read.ok || read.value < LEVEL_RANGE.least || read.value > LEVEL_RANGE.most) return undefined;
  return read.value / 100;
}

export const level = computed<number | undefined>(() => readLevel(shop.value.level));

export function setUnits(units: ShopUnits): void {
  putShop({ units });
}

/** Who measures; empty where nobody is named. */
export const who = computed(() => shop.value.who ?? '');

export function setWho(name: string): void {
  putShop({ who: name });
}

export function setLevel(text: string): void {
  putShop({ level: text });
}

/** How much of each tolerance a plan may leave, in per cent, as typed. */
export function setShare(text: string): void {
  putShop({ share: text });
}

/** Where the shop draws the lines between lapping, grinding and machining. */
export const methodLimits = computed<MethodLimitsEntry>(
  () => shop.value.methodLimits ?? usualMethodLimits(),
);

export function setMethodLimits(entry: MethodLimitsEntry): void {
  putShop({ methodLimits: entry });
}
