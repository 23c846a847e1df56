import { useState } from 'preact/hooks';
import type { Face } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import type { NoseComparatorSetup } from '../../entry/setup-entry';
import { NumberField } from '../../widgets/number-field';
import { faceLabel, pairName } from '../../words/faces';
import { type SetupSheetProps, SheetFrame } from './setup-sheet';
import { StandingBlock } from './standing-block';

/** One setting of the nose comparator: its two heights, and what it shows on either side. */
export function NoseComparatorSheet(props: SetupSheetProps<NoseComparatorSetup>) {
  const { setup, part, problems, sides, locked, onChange, onRemove } = props;
  const { id, faces, base, noseHeight, indicatorHeight, placings } = setup;
  const [active, setActive] = useState<Face>(faces[0]);
  return (
    <SheetFrame
      title={`Nose comparator: ${pairName(faces)}`}
      subtitle={`Part standing on its ${base}. Read one side, swing round, read the other: the setting untouched.`}
      locked={locked}
      onRemove={onRemove}
    >
      <StandingBlock
        part={part}
        faces={faces}
        base={base}
        sides={sides}
        instrument={{
          kind: 'nose comparator',
          face: active,
          nose: noseHeight,
          heights: [indicatorHeight],
          active: 0,
        }}
      />
      <div class="columns">
        <NumberField
          field={fieldKey.noseHeight(id)}
          label="Nose height"
          text={noseHeight.text}
          unit={noseHeight.unit}
          problem={problems.get(fieldKey.noseHeight(id))}
          disabled={locked}
          onText={(text) => onChange({ ...setup, noseHeight: { ...noseHeight, text } })}
        />
        <NumberField
          field={fieldKey.indicatorHeight(id)}
          label="Indicator height"
          text={indicatorHeight.text}
          unit={indicatorHeight.unit}
          problem={problems.get(fieldKey.indicatorHeight(id))}
          disabled={locked}
          onText={(text) => onChange({ ...setup, indicatorHeight: { ...indicatorHeight, text } })}
        />
        {placings.map((placing) => (
          <NumberField
            key={placing.id}
            reading
            field={fieldKey.placing(placing.id)}
            label={`${faceLabel(placing.face)} side`}
            text={placing.reading.text}
            unit={placing.reading.unit}
            problem={problems.get(fieldKey.placing(placing.id))}
            disabled={locked}
            onFocus={() => setActive(placing.face)}
            onText={(text) =>
              onChange({
                ...setup,
                placings: placings.map((one) =>
                  one.id === placing.id ? { ...one, reading: { ...one.reading, text } } : one,
                ),
              })
            }
          />
        ))}
      </div>
      <p class="soft small">Plus is plunger pushed in.</p>
    </SheetFrame>
  );
}
