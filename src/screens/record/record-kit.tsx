import { KIT_LENGTHS, KIT_NUMBERS, type KitEntry } from '../../entry/kit-entry';
import { KIT_NAMES, KIT_NUMBER_UNITS } from '../../words/kit';

/** The figures that every ± comes from. */
export function RecordKit({ kit }: { readonly kit: KitEntry }) {
  const lengths = KIT_LENGTHS.map((item) => {
    const { text, unit } = kit[item];
    return [KIT_NAMES[item], `${text.trim() || '–'} ${unit}`] as const;
  });
  const numbers = KIT_NUMBERS.map((item) => {
    return [KIT_NAMES[item], `${kit[item].trim() || '–'} ${KIT_NUMBER_UNITS[item]}`] as const;
  });
  const { plateKind, plateLength: length, plateWidth: width } = kit;
  const rows =
    plateKind === 'stated'
      ? [...lengths, ...numbers]
      : [
          ...lengths.filter(([name]) => name !== KIT_NAMES.plate),
          [
            'Plate',
            `${plateKind}, ${length.text.trim()} ${length.unit} × ${width.text.trim()} ${width.unit}`,
          ] as const,
          ...numbers,
        ];
  return (
    <section class="record-block-keep">
      <h3>Kit</h3>
      <dl class="record-kit">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
