import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { useRoute } from 'preact-iso';
import { allFindings, isPending } from '../../core/inspection/any-finding';
import { workOut } from '../../state/answers';
import { inspectionIn, type Link } from '../../state/chain';
import { keepWhatIsSaid } from '../../state/said';
import { setWho, who } from '../../state/shop-settings';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { Page } from '../../widgets/page';
import { canShare, shareFile } from '../../widgets/share-file';
import { TextField } from '../../widgets/text-field';
import { Message } from '../message';
import { to } from '../paths';
import { useUnitsButton } from '../units-button';
import { WithPart } from '../with-part';
import { recordFile, recordName } from './record-file';
import { RecordPaper } from './record-paper';

/** What the customer gets: one inspection on paper, as PDF, or as a file. */
export function RecordScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => {
        const inspection = inspectionIn(links, params.inspection);
        if (inspection === undefined) {
          return <Message title="Record" text="These readings are not in this browser." />;
        }
        return <RecordPage part={part} inspection={inspection} links={links} />;
      }}
    </WithPart>
  );
}

interface RecordPageProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly links: readonly Link[];
}

function RecordPage({ part, inspection, links }: RecordPageProps) {
  const paper = useRef<HTMLElement>(null);
  const [isWhole, setWhole] = useState(false);
  const units = useUnitsButton({ part, inspection });
  useEffect(keepWhatIsSaid, []);
  const name = recordName(part.entry, inspection);
  useTitleForPrint(name);
  const worked = workOut(inspection, part.entry);
  // A record that goes out has its verdicts.
  const isReady = !allFindings(worked.answer).some(isPending);
  const share = () => {
    if (paper.current !== null) void shareFile(recordFile(paper.current, name));
  };
  return (
    <Page
      title="Record"
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      opened={units.panel}
      wide
    >
      <InTurns>
        <section class="sheet no-print" aria-label="Record as a file">
          {/* Half a record is handed on to nobody: until it is whole they only keep their place. */}
          <div class="row" style={{ visibility: isWhole ? 'visible' : 'hidden' }}>
            <button
              type="button"
              class="button button-main"
              disabled={!isReady}
              onClick={() => window.print()}
            >
              Print, or save as PDF
            </button>
            <button type="button" class="button" disabled={!isReady} onClick={share}>
              {canShare('record.html', 'text/html') ? 'Share as a file' : 'Save as a file'}
            </button>
          </div>
          <p class="soft small" role="status">
            {isReady
              ? 'The file is a page of its own that any browser opens and prints.'
              : 'Working out what form does to the zones: a moment.'}
          </p>
          {inspection.closed === undefined ? (
            <>
              <TextField id="who" label="Measured by" text={who.value} onText={setWho} />
              <p class="note">
                These readings are still open. Once they are finished the record stands as it is.
              </p>
            </>
          ) : null}
        </section>
        <RecordPaper
          paper={paper}
          part={part}
          inspection={inspection}
          links={links}
          worked={worked}
          onWhole={useCallback(() => setWhole(true), [])}
        />
      </InTurns>
    </Page>
  );
}

/** A printed page, and a PDF, takes its name from the title of the window. */
function useTitleForPrint(name: string): void {
  useEffect(() => {
    const before = document.title;
    document.title = name;
    return () => {
      document.title = before;
    };
  }, [name]);
}
