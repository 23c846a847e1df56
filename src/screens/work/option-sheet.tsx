import type { CorrectionOption } from '../../core/correction/options';
import type { Part } from '../../core/part/part';
import { shop } from '../../state/shop';
import {
  correctionInWords,
  effectInWords,
  pressInWords,
  sizeInWords,
  workedFaceView,
} from '../../words/corrections';
import { requirementName } from '../../words/faces';
import { CutDrawings } from './cut-drawings';

interface OptionSheetProps {
  readonly option: CorrectionOption;
  readonly part: Part;
  /** Absent where later readings or work have overtaken these. */
  readonly onLog: ((option: CorrectionOption) => void) | undefined;
  /** True where reading again comes before any work. */
  readonly tentative: boolean;
}

/** One way to put a requirement right: which edge, how much, where to press, and what it does elsewhere. */
export function OptionSheet({ option, part, onLog, tentative }: OptionSheetProps) {
  const { deviation, size } = shop.value.units;
  const others = option.effects.filter(({ requirement }) => requirement !== option.requirement);
  return (
    <section
      class="sheet"
      aria-label={`Work the ${option.face}: ${requirementName(option.requirement)}`}
    >
      <h3>Work the {option.face}</h3>
      <p>{correctionInWords(option, deviation)}</p>
      <CutDrawings option={option} part={part} />
      <p>
        <b>{pressInWords(option, size)}</b> <span class="soft">{workedFaceView(option.face)}</span>
      </p>
      <p class="small">{sizeInWords(option, deviation)}</p>
      {others.length > 0 && (
        <div>
          <p class="small soft">What it does to the other requirements</p>
          <ul class="effects small">
            {others.map((effect) => (
              <li key={effect.requirement.id}>{effectInWords(effect, deviation)}</li>
            ))}
          </ul>
        </div>
      )}
      {option.finished && (
        <p class="note note-warning">
          This face is marked finished on the drawing: it is to be left alone.
        </p>
      )}
      {onLog !== undefined && !option.finished && (
        <button
          type="button"
          class={tentative ? 'button' : 'button button-main'}
          onClick={() => onLog(option)}
        >
          I work the {option.face}
        </button>
      )}
    </section>
  );
}
