import type { RunRule } from '../core/statistics/run-rules';

/** What a rule that has found something means, as a sentence. */
const RULES: Readonly<Record<RunRule, string>> = {
  'beyond the limits': 'It stands outside the limits.',
  'two of three': 'Two of the last three stand far off, on the same side.',
  'four of five': 'Four of the last five stand well off, on the same side.',
  'eight on one side': 'The last eight all stand on the same side of the middle.',
  'six in a row': 'Six in a row go the same way.',
};

/** Why the last check says that a comparator has moved: each rule once. */
export function movedInWords(rules: readonly RunRule[]): readonly string[] {
  return [...new Set(rules)].map((rule) => RULES[rule]);
}

/** What the chart rests on: few checks make rough limits. */
export function limitsInWords(checks: number): string {
  const rough = checks < 10 ? ' With so few they are rough.' : '';
  return `Limits from ${checks} checks: the middle, and 3 times the mean step from check to check over 1.128 on both sides (NIST/SEMATECH e-Handbook 6.3.2.2), reckoned without those outside.${rough}`;
}
