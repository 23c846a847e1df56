import { listed } from './plans';
import { moment } from './time';

/** How often something is there, by what it is called. */
export interface Count {
  readonly count: number;
  readonly one: string;
  readonly more: string;
}

/** '2 parts and 1 inspection'; 'nothing' where all are 0. */
export function countsInWords(counts: readonly Count[]): string {
  const there = counts.filter(({ count }) => count > 0);
  if (there.length === 0) return 'nothing';
  return listed(there.map(({ count, one, more }) => `${count} ${count === 1 ? one : more}`));
}

/** What putting back came to, where `goneOn` parts had been worked on since and `removed` came with the merge. */
export function putBackInWords({
  removed,
  goneOn,
}: {
  readonly removed: number;
  readonly goneOn: number;
}): string {
  const parts = (count: number) => countsInWords([{ count, one: 'part', more: 'parts' }]);
  const more = [
    ...(removed > 0 ? [`${parts(removed)} from the file removed: the bench can put back`] : []),
    ...(goneOn > 0 ? [`${parts(goneOn)} changed since the merge left as now`] : []),
  ];
  return ['It is as before the merge', ...more].join('; ').concat('. Nothing is lost.');
}

const DAY = 86_400_000;

/** How long ago something was: 'within the last day', 'a day ago', '12 days ago'; plainly where the clock says that it is yet to come. */
export function daysAgo(then: string, now: string): string {
  const days = (Date.parse(now) - Date.parse(then)) / DAY;
  if (days < 0) return `dated ${moment(then)}, after what the clock says now: check the date`;
  if (days < 1) return 'within the last day';
  return days < 2 ? 'a day ago' : `${Math.floor(days)} days ago`;
}
