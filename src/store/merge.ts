import type { EnteredRecord } from './records';
import { isSame, putTogether } from './three-way';

/** What two changed states of a record come to. */
export interface Merged {
  readonly record: EnteredRecord;
  /** The state of which not everything could be taken: it is to be kept as an earlier one. */
  readonly overruled?: EnteredRecord;
}

/**
 * Puts together what two windows have made of a record, both from the state `from`; where that is not
 * known, all that either has counts as added. Of a piece that both changed the later state has its way.
 */
export function merge(
  from: EnteredRecord | undefined,
  mine: EnteredRecord,
  theirs: EnteredRecord,
): Merged {
  const [later, earlier] = mine.changed >= theirs.changed ? [mine, theirs] : [theirs, mine];
  const finished = finishedOne(from, later, earlier);
  if (finished !== undefined)
    return withoutMore(from, finished, finished === later ? earlier : later);
  const { value, clashed } = putTogether({
    from: from && contentOf(from),
    first: contentOf(later),
    second: contentOf(earlier),
  });
  const content = value as EnteredRecord;
  const known = [later, earlier].find((state) => isSame(contentOf(state), content));
  return {
    record: known ?? { ...content, changed: justAfter(later.changed) },
    ...(clashed && { overruled: earlier }),
  };
}

/** The state whose readings were finished, where the other's were still open and both began so. */
function finishedOne(
  from: EnteredRecord | undefined,
  ...states: readonly EnteredRecord[]
): EnteredRecord | undefined {
  const isFinished = (state: EnteredRecord | undefined) =>
    state?.kind === 'inspection' && state.closed !== undefined;
  const finished = states.filter(isFinished);
  return finished.length === 1 && !isFinished(from) ? finished[0] : undefined;
}

/** What was finished says what it said then: nothing more goes into it. */
function withoutMore(
  from: EnteredRecord | undefined,
  finished: EnteredRecord,
  other: EnteredRecord,
): Merged {
  const saysMore = from === undefined || !isSame(contentOf(from), contentOf(other));
  return { record: finished, ...(saysMore && { overruled: other }) };
}

/** All of a record but for the time of its last change. */
function contentOf({ changed: _, ...content }: EnteredRecord): Omit<EnteredRecord, 'changed'> {
  return content;
}

/** A time of its own for a state that is neither window's: 1 ms after the later of the two. */
function justAfter(time: string): string {
  const ms = Date.parse(time);
  return Number.isNaN(ms) ? time : new Date(ms + 1).toISOString();
}
