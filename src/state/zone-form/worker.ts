/*
 * Works zones with form out beside the screen.
 */

import { answerTo } from './answer-to';
import type { Question } from './questions';

self.onmessage = ({ data }: MessageEvent<Question>) => {
  self.postMessage(answerTo(data));
};
