import { useRoute } from 'preact-iso';
import type { Link } from '../../state/chain';
import { readingsFile, resultsFile } from '../../state/tables';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Page } from '../../widgets/page';
import { shareFile } from '../../widgets/share-file';
import { to } from '../paths';
import { useUnitsButton } from '../units-button';
import { WithPart } from '../with-part';
import { ColumnFacts } from './column-facts';
import { TableIn } from './table-in';
import './table-screen.css';

/** The readings of one part as a table for other programs, and a table of readings in. */
export function TableScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => <Tables part={part} links={links} />}
    </WithPart>
  );
}

interface TablesProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}

function Tables({ part, links }: TablesProps) {
  const units = useUnitsButton({ part });
  return (
    <Page
      title="Readings as a table"
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      opened={units.panel}
    >
      <TablesOut part={part} links={links} />
      <TableIn part={part} />
    </Page>
  );
}

function TablesOut({ part, links }: TablesProps) {
  const inspections = links.filter((link): link is InspectionRecord => link.kind === 'inspection');
  return (
    <section class="sheet" aria-labelledby="out-heading">
      <h2 id="out-heading">Out</h2>
      <p>
        CSV for a spreadsheet: a row for each reading or result, in mm and µm as the headings say, a
        decimal point.
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
