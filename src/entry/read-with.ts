import { fieldKey } from './field-keys';
import type { DrawerItem, IndicatorEntry } from './instruments';
import type { InstrumentName, KitEntry } from './kit-entry';
import { itemOf } from './kit-items';
import type { SetupEntry } from './setup-entry';
import { blank, isBlank, type TypedLength } from './typed-length';

/** The setup to be read with what the kit has from the drawer; what the kit leaves open stays as it was. */
export function readWithKit<S extends SetupEntry>(
  setup: S,
  kit: KitEntry,
  drawer: readonly DrawerItem[],
): S {
  switch (setup.kind) {
    case 'nose comparator':
    case 'column': {
      const kind = setup.kind === 'column' ? 'column' : 'comparator';
      const instrument = kit.chosen?.[kind];
      return { ...setup, ...(instrument && { instrument }), ...indicatorIn(kit, drawer) };
    }
    case 'over the top':
    case 'face map':
      return { ...setup, ...indicatorIn(kit, drawer) };
    case 'micrometer': {
      const micrometer = itemOf(kit, 'micrometer', drawer);
      return { ...setup, ...(micrometer && { micrometer }) };
    }
    case 'assumed parallel':
      return setup;
  }
}

function indicatorIn(kit: KitEntry, drawer: readonly DrawerItem[]) {
  const indicator = itemOf(kit, 'indicator', drawer);
  return indicator && { indicator };
}

/** One of the things that a setup is read with: its kind, and which it is, where it says. */
export interface InstrumentPart {
  readonly kind: 'comparator' | 'column' | 'indicator' | 'micrometer';
  readonly chosen: InstrumentName | undefined;
}

/** What a setup is read with. */
export function instrumentPartsOf(setup: SetupEntry): readonly InstrumentPart[] {
  switch (setup.kind) {
    case 'nose comparator':
      return [
        { kind: 'comparator', chosen: setup.instrument },
        { kind: 'indicator', chosen: setup.indicator },
      ];
    case 'column':
      return [
        { kind: 'column', chosen: setup.instrument },
        { kind: 'indicator', chosen: setup.indicator },
      ];
    case 'over the top':
    case 'face map':
      return [{ kind: 'indicator', chosen: setup.indicator }];
    case 'micrometer':
      return [{ kind: 'micrometer', chosen: setup.micrometer }];
    case 'assumed parallel':
      return [];
  }
}

/** The setup read with `item`; without one, with what the kit in use has. */
export function readWithItem<S extends SetupEntry>(
  setup: S,
  kind: InstrumentPart['kind'],
  item: DrawerItem | undefined,
): S {
  const field = FIELDS[kind];
  const { [field]: _, ...others } = setup as S & Instruments;
  const isNameOnly = field === 'instrument';
  const chosen = item && isNameOnly ? { id: item.id, name: item.name } : item;
  return { ...(others as unknown as S), ...(chosen && { [field]: chosen }) };
}

/** Where a setup says it. */
const FIELDS = {
  comparator: 'instrument',
  column: 'instrument',
  indicator: 'indicator',
  micrometer: 'micrometer',
} as const satisfies Readonly<Record<InstrumentPart['kind'], string>>;

type Instruments = Partial<Record<(typeof FIELDS)[keyof typeof FIELDS], unknown>>;

/**
 * The setup as it goes on when another kit is taken. What has been read stays with what it was read
 * with; what has not is read with the new kit.
 */
export function onChangeOfKit<S extends SetupEntry>(
  setup: S,
  before: { readonly kit: KitEntry; readonly name: string },
  after: KitEntry,
  drawer: readonly DrawerItem[],
): S {
  return hasReadings(setup)
    ? keptWith(setup, before)
    : readWithKit(withoutInstruments(setup), after, drawer);
}

function withoutInstruments<S extends SetupEntry>(setup: S): S {
  const { instrument: _, indicator: __, micrometer: ___, ...bare } = setup as S & Instruments;
  // None of the three is needed in any setup.
  return bare as unknown as S;
}

/** The setup with the figures of the kit it was read with, where nothing out of the drawer says them. */
function keptWith<S extends SetupEntry>(
  setup: S,
  { kit, name }: { readonly kit: KitEntry; readonly name: string },
): S {
  const named = { id: '', name };
  const { indicatorResolution, indicatorError, leverAngle, leverWithin } = kit;
  switch (setup.kind) {
    case 'nose comparator':
    case 'column':
    case 'over the top':
    case 'face map': {
      const indicator: IndicatorEntry = {
        ...{ kind: 'indicator', ...named, indicatorResolution, indicatorError },
        ...{ lever: true, leverAngle, leverWithin, range: blank('mm'), plus: 'pushed in' },
      };
      return { ...setup, indicator: setup.indicator ?? indicator };
    }
    case 'micrometer': {
      const { micrometerResolution, micrometerError } = kit;
      const micrometer = { kind: 'micrometer', ...named, micrometerResolution, micrometerError };
      return { ...setup, micrometer: setup.micrometer ?? micrometer };
    }
    case 'assumed parallel':
      return setup;
  }
}

/** True where anything has been typed that an instrument showed. */
export function hasReadings(setup: SetupEntry): boolean {
  return shownIn(setup).some(({ typed }) => !isBlank(typed));
}

/** True where anything that an instrument is to show has not been typed yet. */
export function isToRead(setup: SetupEntry): boolean {
  return shownIn(setup).some(({ typed }) => isBlank(typed));
}

/** What the instrument of a setup showed, with the keys of the fields. */
export function shownIn(
  setup: SetupEntry,
): readonly { readonly key: string; readonly typed: TypedLength }[] {
  switch (setup.kind) {
    case 'nose comparator':
      return setup.placings.map(({ id, reading }) => ({
        key: fieldKey.placing(id),
        typed: reading,
      }));
    case 'column':
      return setup.placings.flatMap(({ id, readings }) =>
        Object.entries(readings).map(([height, typed]) => ({
          key: fieldKey.traverse(id, height),
          typed,
        })),
      );
    case 'micrometer':
      return setup.places.map(({ id, thickness }) => ({
        key: fieldKey.thickness(id),
        typed: thickness,
      }));
    case 'over the top':
    case 'face map':
      return setup.places.map(({ id, reading }) => ({ key: fieldKey.placing(id), typed: reading }));
    case 'assumed parallel':
      return [];
  }
}

/** True where the indicator of the setup counts the other way: its plus is plunger let out. */
export function isTurned(setup: SetupEntry): boolean {
  return 'indicator' in setup && setup.indicator?.plus === 'let out';
}
