import { useLayoutEffect } from 'preact/hooks';
import { useRoute } from 'preact-iso';
import { stepOf } from '../../core/correction/plan/steps';
import { workOut } from '../../state/answers';
import { type Link, latestInspection } from '../../state/chain';
import { usualWay, wayOf } from '../../state/learning';
import { inspectionBefore, removalAdvised, workOutcome } from '../../state/outcomes';
import { notePlace } from '../../state/place-left';
import { shop } from '../../state/shop';
import type { PartRecord, WorkRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { Page } from '../../widgets/page';
import { correctionInWords, pressInWords, workedFaceView } from '../../words/corrections';
import { useBeginReadings } from '../begin-readings';
import { useGatheredFinds } from '../gathered-finds';
import { Message } from '../message';
import { PartsBeside } from '../parts-beside';
import { to } from '../paths';
import { OutcomeFacts } from '../story/outcome-facts';
import { useUnitsButton } from '../units-button';
import { WithPart } from '../with-part';
import { Cautions } from './cautions';
import { CutDrawings } from './cut-drawings';
import { HowToWork } from './how-to-work';
import { WorkFields } from './work-fields';

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
  const last = latestInspection(links);
  const isLast = links.at(-1)?.id === work.id;
  const again = useBeginReadings(part);
  const units = useUnitsButton({ part });
  useGatheredFinds();
  const title = `Work the ${work.face}`;
  // Before it is seen: whoever leaves at once comes back to it.
  useLayoutEffect(() => {
    if (isLast) notePlace({ part: part.id, address: to.work(part.id, work.id), what: title });
  }, [part.id, work.id, title, isLast]);
  return (
    <Page
      title={title}
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      opened={units.panel}
      beside={<PartsBeside current={part.id} from={75} />}
      wide
    >
      <div class="overview">
        <InTurns>
          <div class="overview-part">
            <Advice part={part} work={work} links={links} />
          </div>
          <div class="overview-part">
            {part.example && isLast && (
              <p class="note">
                Invented: say that you lapped it for 12 seconds. Type <b>12</b>, then measure again.
              </p>
            )}
            <WorkFields work={work} />
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
          </div>
        </InTurns>
      </div>
    </Page>
  );
}

/** What was advised when the work was begun. */
function Advice({ part, work, links }: WorkLogProps) {
  const { deviation, size } = shop.value.units;
  const inspection = inspectionBefore(work, links);
  const worked = inspection && workOut(inspection, part.entry);
  const read = worked?.part;
  const step = read && stepOf(read.block, removalAdvised(work));
  return (
    <section class="sheet" aria-labelledby="advice-heading">
      <h2 id="advice-heading">Where and how much</h2>
      {step === undefined || read === undefined ? (
        <p class="note">
          The sizes of the part are missing or wrong, so that nothing can be advised.
        </p>
      ) : (
        <>
          <p>{correctionInWords(step, deviation)}</p>
          <CutDrawings step={step} part={read} />
          <p>
            <b>{pressInWords(step, size)}</b> <span class="soft">{workedFaceView(step.face)}</span>
          </p>
          <HowToWork
            step={step}
            part={read}
            answer={worked?.answer}
            way={work.abrasive.trim() === '' ? usualWay(part) : wayOf(work, part)}
            work={work.id}
          />
        </>
      )}
      <Cautions />
    </section>
  );
}
