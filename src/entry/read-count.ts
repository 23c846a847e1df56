import { readNumber } from './number';
import type { Problem } from './problems';

/** More seconds or strokes than anybody works by hand between two readings. */
const MOST = 100_000;

/** Seconds or strokes as typed: a number above 0, nothing yet, or what is wrong. */
export function readCount(text: string): {
  readonly count: number | undefined;
  readonly problem: Problem | undefined;
} {
  if (text.trim() === '') return { count: undefined, problem: undefined };
  const read = readNumber(text);
  if (!read.ok) return refuse(read.message);
  if (read.value <= 0) return refuse('Above 0');
  if (read.value > MOST) return refuse('More than a day’s work: check the figure');
  return { count: read.value, problem: undefined };
}

function refuse(message: string) {
  return { count: undefined, problem: { kind: 'wrong' as const, message } };
}
