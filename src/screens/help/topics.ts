/** What help can be asked about, and how it is asked. */
export const HELP = {
  'nose comparator': 'What is a nose comparator?',
  'four sides': 'Why all four sides?',
  column: 'What is a column?',
  micrometer: 'What does the micrometer tell?',
  'over the top': 'What does this tell?',
  'face map': 'What does this tell?',
  'assumed parallel': 'What am I saying here?',
  'out of square': 'What is this number?',
  flatness: 'What is this number?',
  doubt: 'What is ±?',
  verdict: 'What is the verdict?',
  chance: 'What is the chance?',
  'per 100 mm': 'What is this?',
  'high edge': 'What is the high edge?',
  'press point': 'Why press there?',
} as const;

export type HelpTopic = keyof typeof HELP;
