import { fieldKey } from '../../entry/field-keys';
import {
  type AbrasiveEntry,
  type DrawerItem,
  MICROMETER_LENGTHS,
  type MicrometerEntry,
  type PlateEntry,
} from '../../entry/instruments';
import type { Problems } from '../../entry/problems';
import { putItem } from '../../state/drawer';
import { LengthField } from '../../widgets/length-field';
import { TextField } from '../../widgets/text-field';
import { IndicatorFields } from './indicator-fields';
import { PlateFields } from './plate-fields';

interface FieldsProps<T extends DrawerItem> {
  readonly item: T;
  readonly problems: Problems;
}

/** All that is known of one thing in the drawer. */
export function ItemFields({ item, problems }: FieldsProps<DrawerItem>) {
  switch (item.kind) {
    case 'indicator':
      return (
        <>
          <NameField item={item} />
          <IndicatorFields item={item} problems={problems} />
        </>
      );
    case 'micrometer':
      return (
        <>
          <NameField item={item} />
          <MicrometerFields item={item} problems={problems} />
        </>
      );
    case 'plate':
      return (
        <>
          <NameField item={item} />
          <OnePlateFields item={item} problems={problems} />
        </>
      );
    case 'abrasive':
      return <AbrasiveFields item={item} />;
    case 'comparator':
    case 'column':
      return (
        <>
          <NameField item={item} />
          <p class="soft small">
            {item.kind === 'comparator'
              ? 'Its zero needs no figure: turning the block round finds it, and it is followed under this name. Its dial goes under Indicator.'
              : 'Its lean needs no figure: turning the block round finds it, and it is followed under this name.'}
          </p>
        </>
      );
  }
}

function NameField({ item }: { readonly item: DrawerItem }) {
  return (
    <TextField
      id={`name-${item.id}`}
      label="Name or number"
      text={item.name}
      onText={(name) => putItem({ ...item, name })}
    />
  );
}

function MicrometerFields({ item, problems }: FieldsProps<MicrometerEntry>) {
  return (
    <>
      {MICROMETER_LENGTHS.map((figure) => (
        <LengthField
          key={figure}
          field={fieldKey.instrument(item.id, figure)}
          label={
            figure === 'micrometerError'
              ? 'Most it is off between two places'
              : 'Smallest step you read'
          }
          typed={item[figure]}
          problems={problems}
          onTyped={(typed) => putItem({ ...item, [figure]: typed })}
        />
      ))}
    </>
  );
}

function OnePlateFields({ item, problems }: FieldsProps<PlateEntry>) {
  const keyOf = (figure: string) => fieldKey.instrument(item.id, figure);
  return (
    <>
      <PlateFields
        id={`plate-${item.id}`}
        plate={item}
        problems={problems}
        keyOf={keyOf}
        onChange={(changed) => putItem({ ...item, ...changed })}
      />
      {item.plateKind === 'stated' && (
        <LengthField
          field={keyOf('plate')}
          label="Most it rises or falls under the block, either way"
          typed={item.plate}
          problems={problems}
          onTyped={(plate) => putItem({ ...item, plate })}
        />
      )}
    </>
  );
}

const ABRASIVE_KINDS = ['paper', 'film', 'compound', 'stone', 'diamond paste'];

function AbrasiveFields({ item }: { readonly item: AbrasiveEntry }) {
  return (
    <div class="columns">
      <TextField
        id={`grit-${item.id}`}
        label="Grit"
        placeholder="P400"
        text={item.grit}
        onText={(grit) => putItem({ ...item, grit })}
      />
      <TextField
        id={`name-${item.id}`}
        label="Kind"
        placeholder="paper"
        suggestions={ABRASIVE_KINDS}
        text={item.name}
        onText={(name) => putItem({ ...item, name })}
      />
    </div>
  );
}
