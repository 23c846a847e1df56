import type { Plan } from '../../../src/core/correction/plan/plan';
import type { Plans } from '../../../src/core/correction/plan/plans-for';
import type { Removal } from '../../../src/core/correction/removal';
import { advise } from '../../../src/core/inspection/advise';
import { inspect } from '../../../src/core/inspection/inspect';
import { axesInFace } from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import { sitReading } from '../../../src/core/readings/unknowns';
import { wideMapDraws } from '../../../src/core/verdict/flatness-conformity';
import { anyWrong, type Problems } from '../../../src/entry/problems';
import { readKit } from '../../../src/entry/read-kit';
import { readPart } from '../../../src/entry/read-part';
import { readSetups } from '../../../src/entry/read-setups';
import { nonsenseShown } from './shown';
import { frozen, unsound } from './sound';
import { untrue } from './truth';
import type { TypedInspection } from './typed-inspections';

/** What became of an inspection: refused beside a field, nothing read, or answered. */
export type Outcome = 'refused' | 'nothing read' | 'answered';

/**
 * Takes what was typed the whole way that the app takes it, to all that is told of it.
 *
 * @throws Error where a refusal says nothing, a number or a text is nonsense, a chance is none, a
 *   removal would put stock on, or anything that was typed is changed.
 */
export function outcomeOf(typed: TypedInspection): Outcome {
  frozen(typed);
  const { part, problems: ofPart } = readPart(typed.part);
  const { kit, problems: ofKit } = readKit(typed.kit);
  if (part === undefined || anyWrong(ofPart)) return refusal(ofPart);
  const { readings: read, problems, planned } = readSetups(typed.setups, part);
  if (anyWrong(problems)) return refusal(problems);
  if (kit === undefined) return refusal(ofKit);
  const readings = read.filter((reading) => {
    const names = 'placing' in reading ? [reading.id, sitReading(reading.placing)] : [reading.id];
    return !names.some((name) => typed.leftOut.includes(name));
  });
  if (readings.length === 0) return 'nothing read';

  frozen(part);
  frozen(readings);
  const level = Number(typed.level) / 100;
  const answer = inspect(part, readings, kit, level, planned);
  const advice = advise(part, answer, { level, share: Number(typed.share) / 100 });
  none('no number', [...unsound(answer, 'answer'), ...unsound(advice, 'advice')]);
  for (const finding of answer.findings) {
    if (!finding.fixed) continue;
    const { probability, zone } = finding;
    none('no chance', probability >= 0 && probability <= 1 ? [] : [probability]);
    none(
      'no doubt',
      zone.parts.filter(({ standard }) => standard < 0),
    );
  }
  for (const finding of answer.flatness) {
    if (!finding.fixed) continue;
    const { zone, probability, toSimulate } = finding;
    const simulated = toSimulate === undefined ? 0 : wideMapDraws(toSimulate)(20);
    const chances = [probability, simulated];
    none(
      'no chance of flatness',
      chances.filter((chance) => !(chance >= 0 && chance <= 1)),
    );
    none('no flatness', zone.width >= 0 && zone.standard >= 0 ? [] : [zone.width, zone.standard]);
  }
  const steps = plansOf(advice.plans).flatMap((plan) => plan.steps);
  none('stock put on', steps.map(({ removal }) => leastOf(removal, part)).filter(isBelowNothing));
  none(
    'too much left',
    plansOf(advice.plans)
      .filter(({ possible }) => possible)
      .flatMap(leftBy),
  );
  none('untrue', untrue(part, readings, kit));
  const shown = nonsenseShown(typed, { part, problems, answer });
  none('nonsense shown', shown === undefined ? [] : [shown]);
  return 'answered';
}

const plansOf = ({ best, single }: Plans): readonly Plan[] => [best, ...single];

/** What a plan leaves above what it was to leave, µm, as far as readings and form let it. */
function leftBy({ effects, sizes }: Plan): readonly number[] {
  const widths = effects
    .filter(({ doubtAlone, formAlone }) => !doubtAlone && !formAlone)
    .map(({ withForm, guard, allowed }) => withForm.after + guard - allowed);
  const shorts = sizes.flatMap(({ corners }) => corners.map(({ short }) => short));
  return [...widths, ...shorts].filter((over) => over > 1e-6);
}

/** µm that come off at the corner where least does. */
function leastOf({ face, mean, slopes }: Removal, { block }: Part): number {
  const rises = axesInFace(face).map((axis) => Math.abs(slopes[axis] ?? 0) * block.size[axis]);
  return mean - rises.reduce((total, rise) => total + rise / 2, 0);
}

/** Beyond what rounding leaves of a feathered edge. */
const isBelowNothing = (amount: number) => amount < -1e-6;

function refusal(problems: Problems): Outcome {
  const messages = [...problems.values()].map(({ message }) => message);
  none('no words', messages.length > 0 ? messages.filter((text) => text.length < 5) : ['silence']);
  return 'refused';
}

function none(what: string, found: readonly unknown[]): void {
  if (found.length > 0) throw new Error(`${what}: ${found.slice(0, 5).map(String).join('; ')}`);
}
