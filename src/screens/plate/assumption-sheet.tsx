import { fieldKey } from '../../entry/field-keys';
import type { AssumptionSetup } from '../../entry/setup-entry';
import { ParallelOrNot } from '../../widgets/drawings/help/parallel-or-not';
import { LengthField } from '../../widgets/length-field';
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
      help="assumed parallel"
      locked={locked}
      onRemove={onRemove}
    >
      <ParallelOrNot />
      <LengthField
        field={fieldKey.within(id)}
        label="Parallel within, over the whole face"
        typed={within}
        problems={problems}
        disabled={locked}
        onTyped={(typed) => onChange((now) => ({ ...now, within: typed }))}
      />
    </SheetFrame>
  );
}
