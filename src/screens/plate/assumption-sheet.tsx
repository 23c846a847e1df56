import { fieldKey } from '../../entry/field-keys';
import type { AssumptionSetup } from '../../entry/setup-entry';
import { NumberField } from '../../widgets/number-field';
import { pairName } from '../../words/faces';
import { type SetupSheetProps, SheetFrame } from './setup-sheet';

/** The toolmaker's word that two faces are parallel. */
export function AssumptionSheet(props: SetupSheetProps<AssumptionSetup>) {
  const { setup, problems, locked, onChange, onRemove } = props;
  const { id, faces, within } = setup;
  return (
    <SheetFrame
      title={`Taken as parallel: ${pairName(faces)}`}
      subtitle="Your word in place of a micrometer. Where it is wrong, the blame falls on the wrong face."
      locked={locked}
      onRemove={onRemove}
    >
      <NumberField
        field={fieldKey.within(id)}
        label="Parallel within, over the whole face"
        text={within.text}
        unit={within.unit}
        problem={problems.get(fieldKey.within(id))}
        disabled={locked}
        onText={(text) => onChange({ ...setup, within: { ...within, text } })}
      />
    </SheetFrame>
  );
}
