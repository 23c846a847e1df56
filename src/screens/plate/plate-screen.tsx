import type { RefObject } from 'preact';
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useRoute } from 'preact-iso';
import { disagrees } from '../../core/inspection/disagreement';
import { adviceOn } from '../../state/advice';
import { type Worked, workOut } from '../../state/answers';
import { inspectionIn, type Link } from '../../state/chain';
import { learnedRate, usualWay } from '../../state/learning';
import { keepWhatIsSaid } from '../../state/said';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { usePrepared } from '../../widgets/later';
import { ENTRY_DONE } from '../../widgets/number-fields';
import { Page } from '../../widgets/page';
import { goToPart } from '../../widgets/scroll-places';
import { useStayAwake } from '../../widgets/stay-awake';
import { useWide } from '../../widgets/wide';
import { AnswerPart } from '../answer/answer-part';
import { Message } from '../message';
import { PartsBeside } from '../parts-beside';
import { TAKE_OFF, to } from '../paths';
import { useUnitsButton } from '../units-button';
import { WhereItIs } from '../where-it-is';
import { WithPart } from '../with-part';
import { CorrectionPart } from '../work/correction-part';
import { FINISH } from './finish';
import { useKeptPlace } from './kept-place';
import { ReadingsPart } from './readings-part';
import { remindsBefore } from './reminders';
import { SoFar } from './so-far';
import { useTakingBack } from './taking-back';

/** At the plate: the readings go in, what they mean comes out. */
export function PlateScreen() {
  const { params } = useRoute();
  return (
    <WithPart id={params.part ?? ''}>
      {(part, links) => {
        const inspection = inspectionIn(links, params.inspection);
        if (inspection === undefined) {
          return <Message title={part.entry.name} text="These readings are not in this browser." />;
        }
        return <Plate key={inspection.id} part={part} inspection={inspection} links={links} />;
      }}
    </WithPart>
  );
}

interface PlateProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly links: readonly Link[];
}

function Plate({ part, inspection, links }: PlateProps) {
  const worked = workOut(inspection, part.entry);
  const units = useUnitsButton({ part, inspection });
  useStayAwake();
  useEffect(keepWhatIsSaid, []);
  const answer = useRef<HTMLDivElement>(null);
  const showAnswer = useCallback(() => showPart(answer.current), []);
  const isLast = links.at(-1)?.id === inspection.id && part.closed === undefined;
  return (
    <Page
      title={part.entry.name.trim() || 'Readings'}
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      opened={units.panel}
      pinned={<SoFar part={part} inspection={inspection} onShow={showAnswer} />}
      beside={<PartsBeside current={part.id} from={90} />}
      wide
    >
      <WhereItIs part={part} />
      <PlateParts
        now={{ part, inspection, worked, links, isLast }}
        answer={answer}
        onDone={showAnswer}
      />
    </Page>
  );
}

/** All that the parts of the screen are drawn from. */
interface AtThePlate {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
  readonly links: readonly Link[];
  /** True where nothing has been read or done since. */
  readonly isLast: boolean;
}

interface PlatePartsProps {
  readonly now: AtThePlate;
  readonly answer: RefObject<HTMLDivElement | null>;
  readonly onDone: () => void;
}

/**
 * The answer in a line stands above, within the frame of the keystroke. The parts follow it, each in
 * a turn of its own, so that no turn keeps the next key waiting.
 */
function PlateParts({ now, answer, onDone }: PlatePartsProps) {
  const readings = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const root = readings.current;
    if (root === null) return;
    const lead = (event: Event) => {
      event.preventDefault();
      onDone();
    };
    root.addEventListener(ENTRY_DONE, lead);
    return () => root.removeEventListener(ENTRY_DONE, lead);
  }, [onDone]);
  const [isWhole, setWhole] = useState(false);
  useKeptPlace(readings, now.inspection, isWhole, remindsBefore(now.part, now.inspection));
  // Without the part there is nothing to read, or not yet.
  const areThere = isWhole || now.worked.part === undefined;
  const takeBack = useTakingBack(readings, now.inspection);
  const correction = useRef<HTMLDivElement>(null);
  const goOn = useCallback(() => showPart(correction.current), []);
  const areBeside = useWide(70);

  const second = usePrepared(areThere ? now : undefined, piecesOfAnswer);
  const third = usePrepared(second, piecesOfPlans);
  return (
    <div class="plate">
      <div class="plate-part" ref={readings} data-takes-back>
        {useMemo(
          () => (
            <ReadingsPart {...now} onTakeBack={takeBack} onWhole={() => setWhole(true)} />
          ),
          [now, takeBack],
        )}
      </div>
      <div class="plate-part" ref={answer}>
        {useMemo(
          () =>
            second && (
              <AnswerPart {...second} areBeside={areBeside} onGoOn={goOn} onFinish={goToFinish} />
            ),
          [second, areBeside, goOn],
        )}
      </div>
      <div class="plate-part" ref={correction} id={TAKE_OFF}>
        {useMemo(() => third && <CorrectionPart {...third} />, [third])}
      </div>
    </div>
  );
}

/** What the answer has beside its findings is worked out when it is first asked for: each in a turn of its own. */
function piecesOfAnswer(now: AtThePlate | undefined): readonly (() => void)[] {
  const answer = now?.worked.answer;
  if (answer === undefined) return [];
  return [
    () => disagrees(answer),
    () => answer.farRepeats,
    ...answer.findings.map((finding) => () => finding.fixed && finding.seatings),
    () => answer.flatness,
    () => answer.sides,
    () => answer.forms,
    () => answer.comparators,
  ];
}

/** Shows a part of the screen, with the focus at its heading: what comes next on the keyboard is in it. */
function showPart(part: HTMLElement | null): void {
  part?.querySelector('h2')?.focus({ preventScroll: true });
  if (part !== null) goToPart(part);
}

function goToFinish(): void {
  const button = document.getElementById(FINISH);
  button?.focus({ preventScroll: true });
  button?.scrollIntoView({ block: 'center' });
}

/** Plans take their time: a turn for each piece of them, one for how fast the shop laps, and then one to be drawn. */
function piecesOfPlans(now: AtThePlate | undefined): readonly (() => void)[] {
  if (now === undefined) return [];
  const { pieces = [] } = adviceOn(now.worked) ?? {};
  return [...pieces, () => learnedRate(usualWay(now.part))];
}
