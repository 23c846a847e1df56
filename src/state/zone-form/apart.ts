import type { Answer, Question } from './questions';
import { Reckoner } from './reckoner';

/*
 * Form of what nobody looks at: for the list of all parts and for tables. It is worked out in a worker
 * of its own, one question after the other, so that nothing on the screen waits for it.
 */

interface Waiting {
  resolve(answer: Answer): void;
  reject(error: unknown): void;
}

let waiting: Waiting | undefined;
let last: Promise<unknown> = Promise.resolve();

const reckoner = new Reckoner(
  (answer) => waiting?.resolve(answer),
  (error) => waiting?.reject(error),
);

/** The answer to `question`, which is of its kind. */
export function answerApart<Q extends Question>(
  question: Q,
): Promise<Extract<Answer, Pick<Q, 'kind'>>> {
  const next = last.then(() => {
    return new Promise<Answer>((resolve, reject) => {
      waiting = { resolve, reject };
      reckoner.start(question);
    });
  });
  last = next.catch(() => undefined);
  return next as Promise<Extract<Answer, Pick<Q, 'kind'>>>;
}
