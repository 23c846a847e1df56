import type { Ref } from 'preact';
import { METHOD } from '../../core/inspection/method';
import type { Worked } from '../../state/answers';
import type { Link } from '../../state/chain';
import { shop } from '../../state/shop';
import { readLevel } from '../../state/shop-settings';
import { versionsOf } from '../../state/versions';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { decisionRuleInWords, UNCERTAINTY_IN_WORDS } from '../../words/record';
import { moment } from '../../words/time';
import { MethodChanged } from './method-changed';
import { RecordAssumed } from './record-assumed';
import { RecordKit } from './record-kit';
import { RecordPart } from './record-part';
import { RecordReadings } from './record-readings';
import { RecordResults } from './record-results';
import { RecordWork } from './record-work';
import './record.css';

interface RecordPaperProps {
  readonly paper: Ref<HTMLElement>;
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly links: readonly Link[];
  readonly worked: Worked;
  /** Told once all of it is drawn. */
  readonly onWhole: () => void;
}

/** The record itself, black on white: on the screen as on paper. */
export function RecordPaper(props: RecordPaperProps) {
  const { paper, part, inspection, links, worked, onWhole } = props;
  const { closed } = inspection;
  const entry = closed?.part ?? part.entry;
  const kit = closed?.kit ?? shop.value.kit;
  const level = readLevel(closed?.level ?? shop.value.level);
  return (
    <article class="record" ref={paper}>
      <InTurns onWhole={onWhole}>
        <header>
          <p class="record-kind">Inspection record: squareness, parallelism and flatness</p>
          <h2 class="record-title">{entry.name.trim() || 'Part without a name'}</h2>
          {part.example && <p>An invented example: no part was measured.</p>}
        </header>
        <RecordPart entry={entry} inspection={inspection} />
        <RecordResults entry={entry} inspection={inspection} worked={worked} />
        <section class="record-block-keep">
          <h3>Decision rule and uncertainty</h3>
          {level !== undefined && <p>{decisionRuleInWords(level)}</p>}
          <p>{UNCERTAINTY_IN_WORDS}</p>
        </section>
        <RecordReadings inspection={inspection} datum={entry.datum} />
        <RecordAssumed entry={entry} inspection={inspection} worked={worked} />
        <RecordKit kit={kit} setups={inspection.setups} />
        <RecordWork inspection={inspection} links={links} entry={entry} />
        <MethodChanged inspection={inspection} entry={entry} />
        <footer>
          <p>
            Worked out by Highedge {__APP_VERSION__}, version {METHOD} of its method, from the
            readings as entered.{' '}
            {closed === undefined
              ? 'The readings are still open.'
              : `Readings finished ${moment(closed.at)}.`}{' '}
            Record of {moment(closed?.at ?? inspection.changed)}, inspection {inspection.id}.
          </p>
          {versionsOf(inspection).map(({ id, made, why, record }) => (
            <p key={id}>
              In place of the readings finished {moment(record.closed?.at ?? record.changed)},
              opened again {moment(made)}: {why || 'no reason given'}.
            </p>
          ))}
        </footer>
      </InTurns>
    </article>
  );
}
