import { type DrawerItem, leverOf } from './instruments';
import type { ChosenKind, KitEntry } from './kit-entry';

/** A thing of which a kit has one: anything of the drawer but abrasives. */
export type KitItem = Extract<DrawerItem, { kind: ChosenKind }>;

/** The kit with a thing out of the drawer, its figures in place of those that stood there. */
export function withItem(kit: KitEntry, item: KitItem): KitEntry {
  const { id, name } = item;
  return { ...kit, ...figuresOf(item), chosen: { ...kit.chosen, [item.kind]: { id, name } } };
}

function figuresOf(item: KitItem): Partial<KitEntry> {
  switch (item.kind) {
    case 'indicator': {
      const { indicatorResolution, indicatorError } = item;
      return { indicatorResolution, indicatorError, ...leverOf(item) };
    }
    case 'micrometer': {
      const { micrometerResolution, micrometerError } = item;
      return { micrometerResolution, micrometerError };
    }
    case 'plate': {
      const { plate, plateKind, plateLength, plateWidth } = item;
      return { plate, plateKind, plateLength, plateWidth };
    }
    case 'comparator':
    case 'column':
      return {};
  }
}

/** The kit with nothing of `kind` chosen: the figures stay, to be typed over. */
export function withoutItem(kit: KitEntry, kind: ChosenKind): KitEntry {
  const { [kind]: _, ...chosen } = kit.chosen ?? {};
  return { ...kit, chosen };
}

/** True where the kit has this very thing. */
export function hasItem(kit: KitEntry, { id, kind }: DrawerItem): boolean {
  return kind !== 'abrasive' && kit.chosen?.[kind]?.id === id;
}

/** The thing of `kind` that the kit has, as it lies in the drawer; undefined where it has none. */
export function itemOf<K extends ChosenKind>(
  kit: KitEntry,
  kind: K,
  drawer: readonly DrawerItem[],
): Extract<DrawerItem, { kind: K }> | undefined {
  const id = kit.chosen?.[kind]?.id;
  return drawer.find(
    (item): item is Extract<DrawerItem, { kind: K }> => item.kind === kind && item.id === id,
  );
}
