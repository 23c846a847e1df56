/*
 * Works zones with form out beside the screen: up to a million draws, which take seconds on a phone.
 */

import { simulateZone } from '../../core/verdict/monte-carlo';
import type { Answer, Question } from './questions';

self.onmessage = ({ data }: MessageEvent<Question>) => {
  const answer: Answer = { key: data.key, zone: simulateZone(data.zone) };
  self.postMessage(answer);
};
