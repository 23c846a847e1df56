import { seatingsToSettleWithForm } from '../../core/inspection/seatings-with-form';
import { probabilityOfWideMap } from '../../core/verdict/flatness-conformity';
import { simulateZone } from '../../core/verdict/monte-carlo';
import type { Answer, Question } from './questions';

/** Works out `question`: a million draws at the most, which take seconds on a phone. */
export function answerTo(question: Question): Answer {
  const { kind, key } = question;
  switch (kind) {
    case 'zone':
      return { kind, key, zone: simulateZone(question.zone) };
    case 'flatness':
      return { kind, key, probability: probabilityOfWideMap(question.map) };
    case 'seatings':
      return { kind, key, seatings: seatingsToSettleWithForm(question.toSettle) };
  }
}
