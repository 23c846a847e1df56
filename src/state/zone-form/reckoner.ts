import { WIDE_MAP_DRAWS, wideMapDraws } from '../../core/verdict/flatness-conformity';
import { whenIdle } from '../idle';
import { answerTo } from './answer-to';
import type { Answer, FlatnessQuestion, Question, QuestionForWorker } from './questions';

/** Draws in one turn of the page: a few ms on a phone. */
const DRAWS_AT_ONCE = 200;

/**
 * Works out one question at a time, in a worker; where there is none, between two frames here. What
 * a flatness asks is worked out here too, a little at a time: the worker would have to bring along
 * all of the minimum zone, which the page has.
 */
export class Reckoner {
  #worker: Worker | undefined;
  #broken = typeof Worker === 'undefined';
  #question: Question | undefined;
  readonly #answered: (answer: Answer) => void;
  readonly #failed: (error: unknown) => void;

  constructor(answered: (answer: Answer) => void, failed: (error: unknown) => void) {
    this.#answered = answered;
    this.#failed = failed;
  }

  get question(): Question | undefined {
    return this.#question;
  }

  start(question: Question): void {
    this.#question = question;
    if (question.kind === 'flatness') {
      whenIdle(() => this.#simulate(question, wideMapDraws(question.map), WIDE_MAP_DRAWS));
      return;
    }
    this.#worker ??= this.#broken ? undefined : this.#open();
    if (this.#worker === undefined) whenIdle(() => this.#workHere(question));
    else this.#worker.postMessage(question);
  }

  /** Leaves the question. A worker in the midst of it hears nothing: only ending it ends the work. */
  stop(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#question = undefined;
  }

  #open(): Worker | undefined {
    try {
      const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
      worker.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.key === this.#question?.key) this.#finish(() => this.#answered(data));
      };
      worker.onerror = () => this.#withoutWorker();
      worker.onmessageerror = () => this.#withoutWorker();
      return worker;
    } catch {
      this.#broken = true;
      return undefined;
    }
  }

  /** An old browser, a strict policy or a lost file: the work is still to be done. */
  #withoutWorker(): void {
    const question = this.#question;
    this.#broken = true;
    this.stop();
    if (question !== undefined) this.start(question);
  }

  #simulate(question: FlatnessQuestion, draw: (count: number) => number, left: number): void {
    if (this.#question !== question) return;
    const { kind, key } = question;
    const probability = draw(DRAWS_AT_ONCE);
    const after = left - DRAWS_AT_ONCE;
    if (after > 0) whenIdle(() => this.#simulate(question, draw, after));
    else this.#finish(() => this.#answered({ kind, key, probability }));
  }

  #workHere(question: QuestionForWorker): void {
    if (this.#question !== question) return;
    try {
      const answer = answerTo(question);
      this.#finish(() => this.#answered(answer));
    } catch (error) {
      this.#finish(() => this.#failed(error));
    }
  }

  #finish(report: () => void): void {
    this.#question = undefined;
    report();
  }
}
