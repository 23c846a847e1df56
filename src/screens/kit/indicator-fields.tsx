import { fieldKey } from '../../entry/field-keys';
import { INDICATOR_LENGTHS, type IndicatorEntry, LEVER_NUMBERS } from '../../entry/instruments';
import type { Problems } from '../../entry/problems';
import { putItem } from '../../state/drawer';
import { Choice } from '../../widgets/choice';
import { PlusOfDial } from '../../widgets/drawings/plus-of-dial';
import { LengthField } from '../../widgets/length-field';
import { NumberField } from '../../widgets/number-field';
import { plusInWords } from '../../words/instruments';

const LENGTH_NAMES: Readonly<Record<(typeof INDICATOR_LENGTHS)[number], string>> = {
  indicatorResolution: 'Smallest step you read',
  indicatorError: 'Most it is off, either way',
};

const NUMBER_NAMES: Readonly<Record<(typeof LEVER_NUMBERS)[number], string>> = {
  leverAngle: 'Angle of the lever to the face, as you use it',
  leverWithin: 'How well you know that angle',
};

const KINDS = [
  ['plunger', 'Plunger'],
  ['lever', 'Lever'],
] as const;

const PLUS = [
  ['pushed in', 'Pushed in'],
  ['let out', 'Let out'],
] as const;

interface IndicatorFieldsProps {
  readonly item: IndicatorEntry;
  readonly problems: Problems;
}

/** An indicator: what it shows, how far it goes, and which way it counts. */
export function IndicatorFields({ item, problems }: IndicatorFieldsProps) {
  const change = (changed: Partial<IndicatorEntry>) => putItem({ ...item, ...changed });
  const keyOf = (figure: string) => fieldKey.instrument(item.id, figure);
  return (
    <>
      {INDICATOR_LENGTHS.map((figure) => (
        <LengthField
          key={figure}
          field={keyOf(figure)}
          label={LENGTH_NAMES[figure]}
          typed={item[figure]}
          problems={problems}
          onTyped={(typed) => change({ [figure]: typed })}
        />
      ))}
      <LengthField
        field={keyOf('range')}
        label="Range: how far it travels in all"
        placeholder="not known"
        optional
        typed={item.range}
        problems={problems}
        onTyped={(range) => change({ range })}
      />
      <Choice
        name={`lever-${item.id}`}
        legend="Plunger or lever"
        options={KINDS}
        chosen={item.lever ? 'lever' : 'plunger'}
        onChoose={(kind) => change({ lever: kind === 'lever' })}
      />
      {item.lever &&
        LEVER_NUMBERS.map((figure) => (
          <NumberField
            key={figure}
            field={keyOf(figure)}
            label={NUMBER_NAMES[figure]}
            text={item[figure]}
            unit="°"
            problem={problems.get(keyOf(figure))}
            onText={(text) => change({ [figure]: text })}
          />
        ))}
      <Choice
        name={`plus-${item.id}`}
        legend="Plus on its dial means the plunger is"
        options={PLUS}
        chosen={item.plus}
        onChoose={(plus) => change({ plus })}
      />
      <PlusOfDial plus={item.plus} />
      <p class="small">{plusInWords(item.plus)}</p>
    </>
  );
}
