import {
  CHOSEN_KINDS,
  KIT_LENGTHS,
  KIT_NUMBERS,
  type KitEntry,
  kitShownIn,
} from '../../entry/kit-entry';
import { instrumentPartsOf } from '../../entry/read-with';
import type { SetupEntry } from '../../entry/setup-entry';
import { isBlank } from '../../entry/typed-length';
import { shop } from '../../state/shop';
import { KIND_NAMES as INSTRUMENTS } from '../../words/instruments';
import { KIND_NAMES } from '../../words/kinds';
import { KIT_NAMES, KIT_NUMBER_UNITS } from '../../words/kit';
import { asTyped } from '../../words/read-as';

interface RecordKitProps {
  readonly kit: KitEntry;
  readonly setups: readonly SetupEntry[];
}

/** The figures that every ± comes from, and what was read with instruments of its own. */
export function RecordKit({ kit: typed, setups }: RecordKitProps) {
  const kit = kitShownIn(typed, shop.value.units);
  const lengths = KIT_LENGTHS.map((item) => {
    return [KIT_NAMES[item], isBlank(kit[item]) ? '–' : asTyped(kit[item])] as const;
  });
  const numbers = KIT_NUMBERS.map((item) => {
    return [KIT_NAMES[item], `${kit[item].trim() || '–'} ${KIT_NUMBER_UNITS[item]}`] as const;
  });
  const chosen = CHOSEN_KINDS.flatMap((kind) => {
    const name = kit.chosen?.[kind]?.name.trim() ?? '';
    return name === '' ? [] : [[`${INSTRUMENTS[kind]}, by name`, name] as const];
  });
  const { plateKind, plateLength: length, plateWidth: width } = kit;
  const rows =
    plateKind === 'stated'
      ? [...lengths, ...numbers]
      : [
          ...lengths.filter(([name]) => name !== KIT_NAMES.plate),
          ['Plate', `${plateKind}, ${asTyped(length)} × ${asTyped(width)}`] as const,
          ...numbers,
        ];
  return (
    <section class="record-block-keep">
      <h3>Kit</h3>
      <dl class="record-kit">
        {[...chosen, ...rows].map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {setups.map((setup, index) =>
        ownInstruments(setup).map((text) => (
          <p key={`${index} ${text}`}>
            {KIND_NAMES[setup.kind]}, {setup.faces.join(' and ')}: {text}
          </p>
        )),
      )}
    </section>
  );
}

/** What the setup was read with where that is not the kit above: its name, and its figures in place of the kit's. */
function ownInstruments(setup: SetupEntry): readonly string[] {
  const named = instrumentPartsOf(setup).flatMap(({ chosen }) => chosen?.name.trim() || []);
  const figures = figuresOf(setup).map(([name, value]) => `${name} ${value}`);
  const all = [...new Set(named), ...figures];
  return all.length === 0 ? [] : [`read with ${all.join(', ')}`];
}

function figuresOf(setup: SetupEntry): readonly (readonly [string, string])[] {
  if (setup.kind === 'assumed parallel') return [];
  const { kind: _, ...own } = (setup.kind === 'micrometer'
    ? setup.micrometer
    : setup.indicator) ?? {
    kind: '',
  };
  const typed = own as Partial<KitEntry>;
  return [
    ...KIT_LENGTHS.flatMap((item) => {
      const figure = typed[item];
      return figure === undefined || isBlank(figure)
        ? []
        : [[KIT_NAMES[item], asTyped(figure)] as const];
    }),
    ...KIT_NUMBERS.flatMap((item) => {
      const text = typed[item]?.trim() ?? '';
      return text === '' ? [] : [[KIT_NAMES[item], `${text} ${KIT_NUMBER_UNITS[item]}`] as const];
    }),
  ];
}
