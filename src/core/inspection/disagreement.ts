import type { InspectionAnswer } from './inspect';

/** True where a reading does not fit the others: then no figure is to be trusted. */
export function disagrees({
  suspects,
  crowns,
}: Pick<InspectionAnswer, 'suspects' | 'crowns'>): boolean {
  return suspects.length > 0 || crowns.length > 0;
}
