import type { InspectionInTable } from '../../exchange/csv/table-kind';
import type { TableRead } from '../../state/tables';
import { SelectField } from '../../widgets/select-field';
import { moment } from '../../words/time';

interface WhichInspectionProps {
  readonly table: TableRead;
  readonly chosen: number;
  readonly onChoose: (inspection: number) => void;
}

/** Of a table that holds more than one inspection, which is to be taken. */
export function WhichInspection({ table, chosen, onChoose }: WhichInspectionProps) {
  const { inspections } = table;
  if (inspections.length < 2) return null;
  return (
    <>
      <p class="note">
        It holds {inspections.length} inspections. They are taken one by one, so that the readings
        of one are not mixed with those of another.
      </p>
      <SelectField
        id="which-inspection"
        label="Which of them"
        options={inspections.map((one, index) => [String(index), nameOf(one)] as const)}
        chosen={String(chosen)}
        onChoose={(index) => onChoose(Number(index))}
      />
    </>
  );
}

/** What an inspection in a table is called in a list. */
export function nameOf({ part, job, taken, count }: InspectionInTable): string {
  const when = Number.isNaN(Date.parse(taken)) ? taken : moment(taken);
  const names = [part, job, when].filter(Boolean).join(', ') || 'Without a name';
  return `${names}: ${count} ${count === 1 ? 'row' : 'rows'}`;
}
