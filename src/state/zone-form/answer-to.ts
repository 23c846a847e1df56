import { seatingsToSettleWithForm } from '../../core/inspection/seatings-with-form';
import { simulateZone } from '../../core/verdict/monte-carlo';
import type { Answer, QuestionForWorker } from './questions';

/** Works out `question`: a million draws at the most, which take seconds on a phone. */
export function answerTo(question: QuestionForWorker): Answer {
  const { kind, key } = question;
  return kind === 'zone'
    ? { kind, key, zone: simulateZone(question.zone) }
    : { kind, key, seatings: seatingsToSettleWithForm(question.toSettle) };
}
