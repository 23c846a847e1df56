import type { PartEntry } from '../../entry/part-entry';
import type { InspectionRecord } from '../../store/records';
import { requirementName } from '../../words/faces';
import { AskedFrame } from './asked-frame';
import { NotFixed } from './not-fixed';
import type { NotFixedGroup } from './not-fixed-groups';

interface NotFixedSheetProps {
  readonly group: NotFixedGroup;
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
}

/** What the drawing asks of a pair of faces and the readings do not fix, told once. */
export function NotFixedSheet({ group, entry, inspection }: NotFixedSheetProps) {
  const [first] = group;
  const names = group.map(({ requirement }) => requirementName(requirement));
  return (
    <section class="sheet" aria-label={`Not fixed: ${names.join(', ')}`}>
      {group.map(({ requirement }) => (
        <AskedFrame key={requirement.id} requirement={requirement} entry={entry} />
      ))}
      <NotFixed remedies={first.remedies} requirement={first.requirement} inspection={inspection} />
    </section>
  );
}
