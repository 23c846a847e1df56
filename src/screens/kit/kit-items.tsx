import { CHOSEN_KINDS, type ChosenKind, type KitEntry } from '../../entry/kit-entry';
import { choosable, chooseForKit } from '../../state/drawer';
import { SelectField } from '../../widgets/select-field';
import { itemLabel, KIND_NAMES } from '../../words/instruments';
import { useCameFrom } from '../came-from';
import { to } from '../paths';

/** What of the drawer is in this kit; with an empty drawer only the way to fill it. */
export function KitItems({ entry }: { readonly entry: KitEntry }) {
  const from = useCameFrom();
  return (
    <>
      {CHOSEN_KINDS.map((kind) => (
        <ItemChoice key={kind} kind={kind} entry={entry} />
      ))}
      <a class="button" href={to.drawer(from)}>
        The drawer: instruments, plates and abrasives
      </a>
    </>
  );
}

function ItemChoice({ kind, entry }: { readonly kind: ChosenKind; readonly entry: KitEntry }) {
  const chosen = entry.chosen?.[kind];
  const items = choosable.value.filter((item) => item.kind === kind);
  if (items.length === 0) return null;
  return (
    <SelectField
      id={`kit-${kind}`}
      label={KIND_NAMES[kind]}
      options={[
        ['', 'None out of the drawer'],
        ...items.map((item) => [item.id, itemLabel(item)] as const),
      ]}
      chosen={items.some(({ id }) => id === chosen?.id) ? (chosen?.id ?? '') : ''}
      onChoose={(id) => chooseForKit(kind, id)}
    />
  );
}
