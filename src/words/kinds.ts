import type { SetupKind } from '../entry/setup-entry';

/** Each way of reading, by name. */
export const KIND_NAMES: Readonly<Record<SetupKind, string>> = {
  'nose comparator': 'Nose comparator',
  column: 'Column',
  micrometer: 'Micrometer',
  'over the top': 'Indicator over the top',
  'face map': 'Face map, levelled on jacks',
  'assumed parallel': 'Taken as parallel, within',
};
