import type { Problem, Problems } from '../../../src/entry/problems';

/** Problems as plain data, to be compared whole: none may be left unsaid. */
export function told(problems: Problems): Record<string, Problem> {
  return Object.fromEntries(problems);
}

export const wrong = (message: string): Problem => ({ kind: 'wrong', message });
export const missing = (message: string): Problem => ({ kind: 'missing', message });
