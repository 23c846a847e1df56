/*
 * Works zones with form out beside the screen.
 */

import { answerTo } from './answer-to';
import type { QuestionForWorker } from './questions';

self.onmessage = ({ data }: MessageEvent<QuestionForWorker>) => {
  self.postMessage(answerTo(data));
};
