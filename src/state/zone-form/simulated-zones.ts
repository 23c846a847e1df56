import { signal } from '@preact/signals';
import { decide, type Verdict } from '../../core/verdict/conformity';
import type { SimulatedZone } from '../../core/verdict/monte-carlo';
import { level } from '../shop';
import { type FixedFinding, type Question, questionOf } from './questions';
import { Reckoner } from './reckoner';

/** A zone with form, and the verdict on it at the shop's level. */
export interface JudgedZone extends SimulatedZone {
  readonly verdict: Verdict;
}

/** Answers that are kept: those of one part, and what its readings were a moment ago. */
const KEPT = 40;

/** Answers by the key of their question, the oldest first. */
const answers = signal<ReadonlyMap<string, SimulatedZone>>(new Map());

/** The last question of each requirement that has no answer yet, the oldest first. */
const waiting = new Map<string, Question>();

const reckoner = new Reckoner(
  ({ key, zone }) => {
    drop(key);
    answers.value = new Map([...answers.value, [key, zone] as const].slice(-KEPT));
    next();
  },
  (error) => {
    console.error(error);
    // The one that failed is the first that waits; asked again, it would fail again.
    const [first] = waiting.values();
    if (first !== undefined) drop(first.key);
    next();
  },
);

/**
 * The zone of `finding` with the form at its points, or undefined until it is worked out. Where it
 * is read in a component, the answer shows it again. Of one requirement the last question drops
 * those before it: while somebody types, old ones are not worked out to their end.
 */
export function simulatedZone(finding: FixedFinding): JudgedZone | undefined {
  const question = questionOf(finding);
  const zone = answers.value.get(question.key);
  if (zone !== undefined) return { ...zone, verdict: decide(zone.probability, level.value) };
  ask(question);
  return undefined;
}

function ask(question: Question): void {
  if (waiting.get(question.asker)?.key === question.key) return;
  waiting.set(question.asker, question);
  if (reckoner.question?.asker === question.asker) reckoner.stop();
  next();
}

function next(): void {
  if (reckoner.question !== undefined) return;
  const [first] = waiting.values();
  if (first !== undefined) reckoner.start(first);
}

function drop(key: string): void {
  for (const [asker, question] of waiting) if (question.key === key) waiting.delete(asker);
}
