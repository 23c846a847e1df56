import { useRoute } from 'preact-iso';
import type { Link } from '../../state/chain';
import { readingsFile, resultsFile } from '../../state/tables';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Page } from '../../widgets/page';
import { shareFile } from '../../widgets/share-file';
import { to } from '../paths';
import { WithPart } from '../with-part';
import { ColumnFacts } from './column-facts';
import { TableIn } from './table-in';
import './table-screen.css';

/** The readings of one part as a table for other programs, and a table of readings in. */
export function TableScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => (
        <Page title="Readings as a table" back={{ to: to.part(part.id), name: 'the part' }}>
          <TablesOut part={part} links={links} />
          <TableIn part={part} />
        </Page>
      )}
    </WithPart>
  );
}

function TablesOut({
  part,
  links,
}: {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}) {
  const inspections = links.filter((link): link is InspectionRecord => link.kind === 'inspection');
  return (
    <section class="sheet" aria-labelledby="out-heading">
      <h2 id="out-heading">Out</h2>
      <p>
        CSV for a spreadsheet: a row for each reading or result, units in the headings, a decimal
        point.
      </p>
      <div class="row">
        <button
          type="button"
          class="button"
          onClick={() => void shareFile(readingsFile(part, inspections))}
        >
          Readings
        </button>
        <button
          type="button"
          class="button"
          onClick={() => void shareFile(resultsFile(part, inspections))}
        >
          Results
        </button>
      </div>
      <ColumnFacts />
    </section>
  );
}
