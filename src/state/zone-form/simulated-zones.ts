import { signal } from '@preact/signals';
import { type FixedFlatness, settledFlatness } from '../../core/inspection/flatness';
import type { Seatings } from '../../core/inspection/seatings';
import { decide, type Verdict } from '../../core/verdict/conformity';
import type { SimulatedZone } from '../../core/verdict/monte-carlo';
import {
  type Answer,
  type FixedFinding,
  flatnessQuestion,
  type Grounds,
  type Question,
  seatingsQuestion,
  zoneQuestion,
} from './questions';
import { Reckoner } from './reckoner';

/** A zone with form, and the verdict on it. */
export interface JudgedZone {
  readonly zone: SimulatedZone;
  readonly verdict: Verdict;
  /** Where that is too close to call: how many more seatings would settle it, once it is worked out. */
  readonly seatings?: Seatings;
}

/** Answers that are kept: those of one part, and what its readings were a moment ago. */
const KEPT = 80;

/** Answers by the key of their question, the oldest first. */
const answers = signal<ReadonlyMap<string, Answer>>(new Map());

/** The last question of each requirement that has no answer yet, the oldest first. */
const waiting = new Map<string, Question>();

const reckoner = new Reckoner(
  (answer) => {
    drop(answer.key);
    answers.value = new Map([...answers.value, [answer.key, answer] as const].slice(-KEPT));
    next();
  },
  (error) => {
    console.error(error);
    // The one that failed is the first that waits; asked again, it would fail again.
    const failed = firstWaiting();
    if (failed !== undefined) drop(failed.key);
    next();
  },
);

/**
 * The zone of `finding` with the form at its points, or undefined until it is worked out. Where it
 * is read in a component, the answer shows it again. Of one requirement the last question drops
 * those before it: while somebody types, old ones are not worked out to their end.
 */
export function simulatedZone(finding: FixedFinding, grounds: Grounds): JudgedZone | undefined {
  const asked = answerSoFar(zoneQuestion(finding));
  if (asked?.kind !== 'zone') return undefined;
  const { zone } = asked;
  const verdict = decide(zone.probability, grounds.level);
  if (verdict !== 'too close to call') return { zone, verdict };
  const settled = answerSoFar(seatingsQuestion(finding, grounds));
  return settled?.kind === 'seatings'
    ? { zone, verdict, seatings: settled.seatings }
    : { zone, verdict };
}

/**
 * The finding of a face that is wider than its tolerance with noise taken account of, as soon as that
 * is worked out; the same of any other at once.
 */
export function simulatedFlatness(finding: FixedFlatness, level: number): FixedFlatness {
  const { requirement, toSimulate } = finding;
  if (toSimulate === undefined) return finding;
  const asked = answerSoFar(flatnessQuestion(requirement.id, toSimulate));
  return asked?.kind === 'flatness' ? settledFlatness(finding, asked.probability, level) : finding;
}

/** The answer to `question` where there is one; otherwise it is asked. */
function answerSoFar(question: Question): Answer | undefined {
  const answer = answers.value.get(question.key);
  if (answer === undefined) ask(question);
  return answer;
}

function ask(question: Question): void {
  if (waiting.get(question.asker)?.key === question.key) return;
  waiting.set(question.asker, question);
  const underway = reckoner.question;
  const isLessUrgent = underway?.kind === 'seatings' && question.kind !== 'seatings';
  if (underway?.asker === question.asker || isLessUrgent) reckoner.stop();
  next();
}

function next(): void {
  if (reckoner.question !== undefined) return;
  const first = firstWaiting();
  if (first !== undefined) reckoner.start(first);
}

/** Verdicts first: how to settle one can wait. */
function firstWaiting(): Question | undefined {
  const all = [...waiting.values()];
  return all.find(({ kind }) => kind !== 'seatings') ?? all[0];
}

function drop(key: string): void {
  for (const [asker, question] of waiting) if (question.key === key) waiting.delete(asker);
}
