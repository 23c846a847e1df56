import type { PlanStep } from '../../core/correction/plan/plan';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import type { Part } from '../../core/part/part';
import type { WayOfWorking } from '../../entry/way-of-working';
import { shop } from '../../state/shop';
import { Later } from '../../widgets/later';
import {
  correctionInWords,
  pressInWords,
  sizeInWords,
  workedFaceView,
} from '../../words/corrections';
import { Help } from '../help/help';
import { CutDrawings } from './cut-drawings';
import { HowToWork } from './how-to-work';

interface StepSheetProps {
  readonly step: PlanStep;
  readonly part: Part;
  readonly answer: InspectionAnswer;
  /** How it would be lapped. */
  readonly way: WayOfWorking;
  /** Absent where later readings or work have overtaken these. */
  readonly onLog: ((step: PlanStep) => void) | undefined;
  /** True where reading again comes before any work. */
  readonly tentative: boolean;
}

/** One face to work: which edge, how much, where to press, and what it does behind the face. */
export function StepSheet({ step, part, answer, way, onLog, tentative }: StepSheetProps) {
  const { deviation, size } = shop.value.units;
  const { face } = step;
  return (
    <section class="sheet" aria-label={`Work the ${face}`}>
      <h4>Work the {face}</h4>
      <p>{correctionInWords(step, deviation)}</p>
      <Later turns={2}>
        <CutDrawings step={step} part={part} />
      </Later>
      <p>
        <b>{pressInWords(step, size)}</b> <span class="soft">{workedFaceView(face)}</span>
      </p>
      <p class="small">{sizeInWords(step, deviation)}</p>
      <Help topics={['high edge', 'press point']} />
      <Later turns={3}>
        <HowToWork step={step} part={part} answer={answer} way={way} />
      </Later>
      {onLog !== undefined && (
        <button
          type="button"
          class={tentative ? 'button' : 'button button-main'}
          data-leads-on
          onClick={() => onLog(step)}
        >
          I work the {face}
        </button>
      )}
    </section>
  );
}
