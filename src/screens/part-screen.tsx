import { useEffect } from 'preact/hooks';
import { useRoute } from 'preact-iso';
import { allFindings } from '../core/inspection/any-finding';
import { isAnyOut } from '../core/inspection/need';
import { linesOf, type PartEntry } from '../entry/part-entry';
import { isReady, readPart } from '../entry/read-part';
import { workOut } from '../state/answers';
import { inspectionIn, type Link, latestInspection } from '../state/chain';
import { closePart, reopenPart } from '../state/inspections';
import { keepWhatIsSaid } from '../state/said';
import type { PartRecord } from '../store/records';
import { InTurns } from '../widgets/in-turns';
import { Later } from '../widgets/later';
import { Page } from '../widgets/page';
import { RequirementFrame } from '../widgets/requirement-frame';
import { asTyped } from '../words/read-as';
import { sizesInWords } from '../words/sizes';
import { moment } from '../words/time';
import { WhereItStands } from './answer/where-it-stands';
import { useBeginReadings } from './begin-readings';
import { PartShelf } from './part-shelf';
import { PartsBeside } from './parts-beside';
import { to } from './paths';
import { Story } from './story/story';
import { useUnitsButton } from './units-button';
import { WhereItIs } from './where-it-is';
import { WithPart } from './with-part';

/** One part: what is asked of it, what comes next, and all that happened to it. */
export function PartScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => <PartOverview part={part} links={links} />}
    </WithPart>
  );
}

interface PartOverviewProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}

function PartOverview({ part, links }: PartOverviewProps) {
  const { entry } = part;
  const units = useUnitsButton({ part });
  useEffect(keepWhatIsSaid, []);
  return (
    <Page
      title={entry.name.trim() || 'Part without a name'}
      back={{ to: to.bench(), name: 'the bench' }}
      side={units.button}
      opened={units.panel}
      beside={<PartsBeside current={part.id} from={75} />}
      wide
    >
      <div class="overview">
        <div class="overview-part">
          <InTurns>
            <WhereItIs part={part} />
            <NextStep part={part} links={links} />
            <Asked entry={entry} drawing={to.drawing(part.id)} />
            <PartShelf part={part} links={links} />
          </InTurns>
        </div>
        <div class="overview-part">
          <Later turns={3}>
            <Story part={part} links={links} />
            <a class="button" href={to.table(part.id)}>
              Readings as a table, out and in
            </a>
          </Later>
        </div>
      </div>
    </Page>
  );
}

/** What the drawing says of the part. */
function Asked({ entry, drawing }: { readonly entry: PartEntry; readonly drawing: string }) {
  const lines = linesOf(entry);
  return (
    <section class="sheet" aria-labelledby="asked-heading">
      <div class="sheet-head">
        <h2 id="asked-heading">The drawing</h2>
        <a class="button" href={drawing}>
          Change
        </a>
      </div>
      <p class="sizes">{sizesInWords(entry.size)}</p>
      <p class="soft">
        {[entry.job.trim(), entry.material.trim(), `Stands on its ${entry.datum} (A)`]
          .filter(Boolean)
          .join(' · ')}
      </p>
      {lines.length === 0 && <p>Nothing is asked of it yet.</p>}
      <ul class="stack">
        {lines.map(({ id, face, datum, tolerance }) => (
          <li key={id}>
            <RequirementFrame
              face={face}
              datum={datum}
              tolerance={tolerance.text.trim() === '' ? '?' : asTyped(tolerance)}
              datumA={entry.datum}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Where the part stands, and the one thing to do now. */
function NextStep({ part, links }: PartOverviewProps) {
  const begin = useBeginReadings(part);
  if (!isReady(readPart(part.entry))) {
    return (
      <a class="button button-main" href={to.drawing(part.id)}>
        Describe the part
      </a>
    );
  }
  const last = latestInspection(links);
  if (part.closed !== undefined) return <Closed part={part} links={links} closed={part.closed} />;
  const isOpen = last !== undefined && last.closed === undefined;
  // Nothing has been done since.
  const isLast = last !== undefined && links.at(-1) === last;
  const findings = isLast ? allFindings(workOut(last, part.entry).answer) : [];
  return (
    <>
      {last !== undefined && (
        <section class="sheet" aria-labelledby="stands-heading">
          <h2 id="stands-heading">Where it stands</h2>
          <WhereItStands part={part} inspection={last} />
          {isAnyOut(findings) && (
            <a class="button" href={to.takeOff(part.id, last.id)}>
              What to take off
            </a>
          )}
        </section>
      )}
      {isOpen ? (
        <a class="button button-main" href={to.plate(part.id, last.id)}>
          Go on with the readings
        </a>
      ) : (
        <button type="button" class="button button-main" onClick={begin}>
          {last === undefined ? 'Take readings' : 'Measure again'}
        </button>
      )}
      {/* With nothing fixed there is nothing to close a part with. */}
      {isLast && findings.some(({ fixed }) => fixed) && (
        <button type="button" class="button" onClick={() => closePart(part, last)}>
          Close the part with these readings
        </button>
      )}
    </>
  );
}

interface ClosedProps extends PartOverviewProps {
  readonly closed: NonNullable<PartRecord['closed']>;
}

/** What a closed part was let go with. */
function Closed({ part, links, closed }: ClosedProps) {
  const inspection = inspectionIn(links, closed.inspection);
  return (
    <section class="sheet" aria-label="Closed">
      <h2>Closed {moment(closed.at)}</h2>
      {inspection !== undefined && (
        <>
          <WhereItStands part={part} inspection={inspection} />
          <a class="button" href={to.plate(part.id, inspection.id)}>
            The readings it was let go with
          </a>
          <a class="button button-main" href={to.record(part.id, inspection.id)}>
            The record for the customer
          </a>
        </>
      )}
      <button type="button" class="button" onClick={() => reopenPart(part)}>
        Take it up again
      </button>
    </section>
  );
}
