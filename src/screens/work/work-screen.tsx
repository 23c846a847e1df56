import { useRoute } from 'preact-iso';
import type { CorrectionOption } from '../../core/correction/options';
import { fieldKey } from '../../entry/field-keys';
import { readCount } from '../../entry/read-count';
import { workOut } from '../../state/answers';
import { type Link, latestInspection, putWork } from '../../state/chain';
import { workOutcome } from '../../state/outcomes';
import { shop } from '../../state/shop';
import type { InspectionRecord, PartRecord, WorkRecord } from '../../store/records';
import { Choice } from '../../widgets/choice';
import { NumberField } from '../../widgets/number-field';
import { Page } from '../../widgets/page';
import { TextField } from '../../widgets/text-field';
import { correctionInWords, pressInWords, workedFaceView } from '../../words/corrections';
import { useBeginReadings } from '../begin-readings';
import { to } from '../paths';
import { OutcomeFacts } from '../story/outcome-facts';
import { Message, WithPart } from '../with-part';
import { Cautions } from './cautions';
import { CutDrawings } from './cut-drawings';

const METHODS = [
  ['lap', 'Lapping'],
  ['grind', 'Grinding'],
  ['machine', 'Machining'],
  ['scrape', 'Scraping'],
] as const;

const AMOUNTS = [
  ['seconds', 'seconds'],
  ['strokes', 'strokes'],
] as const;

/** Kinds of abrasive as the trade names them; anything else may be typed. */
const ABRASIVES = ['P320 paper', 'P400 paper', 'P600 paper', 'P1000 paper', 'Lapping compound'];

/** A piece of work: the advice in sight, what is done written down, then back to the plate. */
export function WorkScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => {
        const work = links.find(
          (link): link is WorkRecord => link.kind === 'work' && link.id === params.work,
        );
        if (work === undefined) {
          return <Message title={part.entry.name} text="This work is not in this browser." />;
        }
        return <WorkLog part={part} work={work} links={links} />;
      }}
    </WithPart>
  );
}

interface WorkLogProps {
  readonly part: PartRecord;
  readonly work: WorkRecord;
  readonly links: readonly Link[];
}

function WorkLog({ part, work, links }: WorkLogProps) {
  const outcome = workOutcome(work, links, part.entry);
  const change = (changed: Partial<WorkRecord>) => putWork({ ...work, ...changed });
  const last = latestInspection(links);
  const isLast = links.at(-1)?.id === work.id;
  const again = useBeginReadings(part);
  return (
    <Page title={`Work the ${work.face}`} back={{ to: to.part(part.id), name: 'the part' }}>
      <Advice part={part} work={work} links={links} />
      <section class="sheet" aria-labelledby="done-heading">
        <h2 id="done-heading">What was done</h2>
        <Choice
          name="method"
          legend="Way of working"
          options={METHODS}
          chosen={work.method}
          onChoose={(method) => change({ method })}
        />
        <TextField
          id="abrasive"
          label="Abrasive, wheel or tool"
          text={work.abrasive}
          suggestions={ABRASIVES}
          onText={(abrasive) => change({ abrasive })}
        />
        <NumberField
          field={fieldKey.amount()}
          label="How much"
          reading
          text={work.amount.text}
          unit={work.amount.unit}
          problem={readCount(work.amount.text).problem}
          onText={(text) => change({ amount: { ...work.amount, text } })}
        />
        <Choice
          name="amount-unit"
          legend="Counted in"
          options={AMOUNTS}
          chosen={work.amount.unit}
          onChoose={(unit) => change({ amount: { ...work.amount, unit } })}
        />
        <TextField id="note" label="Note" text={work.note} onText={(note) => change({ note })} />
      </section>
      {outcome !== undefined && (
        <section class="sheet" aria-labelledby="outcome-heading">
          <h2 id="outcome-heading">What it has done</h2>
          <OutcomeFacts outcome={outcome} work={work} />
        </section>
      )}
      {isLast ? (
        <button type="button" class="button button-main" onClick={again}>
          Measure again
        </button>
      ) : (
        last !== undefined && (
          <a class="button" href={to.plate(part.id, last.id)}>
            To the latest readings
          </a>
        )
      )}
    </Page>
  );
}

/** What was advised, from the readings that the work follows. */
function Advice({ part, work, links }: WorkLogProps) {
  const { deviation, size } = shop.value.units;
  const inspection = links.find(
    (link): link is InspectionRecord => link.kind === 'inspection' && link.id === work.after,
  );
  const worked = inspection && workOut(inspection, part.entry);
  const option: CorrectionOption | undefined = worked?.answer?.corrections
    .flat()
    .find(({ requirement, face }) => requirement.id === work.requirement && face === work.face);
  return (
    <section class="sheet" aria-labelledby="advice-heading">
      <h2 id="advice-heading">Where and how much</h2>
      {option === undefined || worked?.part === undefined ? (
        <p class="note">The readings that this follows give no advice any more.</p>
      ) : (
        <>
          <p>{correctionInWords(option, deviation)}</p>
          <CutDrawings option={option} part={worked.part} />
          <p>
            <b>{pressInWords(option, size)}</b>{' '}
            <span class="soft">{workedFaceView(option.face)}</span>
          </p>
        </>
      )}
      <Cautions />
    </section>
  );
}
