import { computed } from '@preact/signals';
import { decide } from '../core/verdict/conformity';
import { isUntouched } from '../entry/part-entry';
import type { PartRecord, Standing, SummaryRecord } from '../store/records';
import { parts } from './shop';
import { summaries } from './summaries';
import { turns } from './turns';
import { allWords } from './words-sought';

/** Where a part stands, in the words of the list. */
export type PartState = 'needs work' | 'too close' | 'in' | 'not read';

/** Which parts are in the list. */
export type Shelf = 'bench' | 'archive' | 'removed';

export interface Asked {
  /** Words that all have to be found in name, job, material or date; capitals do not matter. */
  readonly words: string;
  readonly state: PartState | 'any';
  readonly shelf: Shelf;
}

/**
 * Where a part stands by its latest readings: a requirement that is out outweighs one that is not
 * read, and that one outweighs one that is too close to call.
 *
 * @param level least probability for a verdict.
 * @returns undefined while it is not known.
 */
export function stateOf(standing: Standing | undefined, level: number): PartState | undefined {
  if (standing === undefined) return undefined;
  const verdicts = standing.probabilities.map((probability) => decide(probability, level));
  if (verdicts.includes('out')) return 'needs work';
  if (standing.notFixed > 0 || verdicts.length === 0) return 'not read';
  return verdicts.includes('too close to call') ? 'too close' : 'in';
}

export function shelfOf({ removed, archived }: PartRecord): Shelf {
  if (removed !== undefined) return 'removed';
  return archived === undefined ? 'bench' : 'archive';
}

/** A part with where it stands. */
export interface ListedPart {
  readonly part: PartRecord;
  readonly standing: Standing | undefined;
  /** The day that the list orders it by: of its latest readings, or of its making. */
  readonly at: string;
}

/** All parts, the one read last first. */
export function listParts(
  records: ReadonlyMap<string, PartRecord>,
  known: ReadonlyMap<string, SummaryRecord>,
): readonly ListedPart[] {
  const all = [...records.values()].map((part): ListedPart => {
    const standing = known.get(part.id)?.standing;
    return { part, standing, at: standing?.read ?? part.made };
  });
  // As text, ISO 8601 sorts in the order of time; of those made at once the later one comes first.
  return all.reverse().sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** All parts, worked out once for each change of them. */
export const listed = computed(() => listParts(parts.value, summaries.value));

/** A part that was begun and left with nothing typed: it lies in no list, and 'New part' goes on with it. */
export function isBlankSheet({ part, standing }: Pick<ListedPart, 'part' | 'standing'>): boolean {
  const { entry, archived, removed } = part;
  const isPutAway = archived !== undefined || removed !== undefined;
  return !isPutAway && standing?.read === undefined && isUntouched(entry);
}

/** True once there is any part to list. */
export const hasParts = computed(() => listed.value.some((one) => !isBlankSheet(one)));

/** Those of the list that are asked for, in its order. */
export function findParts(
  all: readonly ListedPart[],
  { words, state, shelf }: Asked,
  level: number,
): readonly ListedPart[] {
  const isSought = allWords(words);
  return all.filter(
    ({ part, standing, at }) =>
      !isBlankSheet({ part, standing }) &&
      shelfOf(part) === shelf &&
      (state === 'any' || stateOf(standing, level) === state) &&
      (words.trim() === '' || isSought(searchText(part, at))),
  );
}

/** A part is searched at every keystroke, and seldom changes. */
const texts = new WeakMap<PartRecord, { readonly at: string; readonly text: string }>();

/** Prepares what the parts are found by, a little at a time, so that the first key need not: until `isWanted` says no more. */
export async function prepareSearch(isWanted: () => boolean): Promise<void> {
  const turn = turns();
  for (const { part, at } of listed.peek()) {
    if (!isWanted()) return;
    searchText(part, at);
    await turn();
  }
}

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** All that a part can be found by: '2024-03-05' and '5 mar 2024' for its day. */
function searchText(part: PartRecord, at: string): string {
  const known = texts.get(part);
  if (known?.at === at) return known.text;
  const { name, job, material } = part.entry;
  const day = new Date(at);
  const [year, month, date] = [day.getFullYear(), day.getMonth(), day.getDate()];
  const iso = [year, month + 1, date].map((number) => String(number).padStart(2, '0')).join('-');
  const text = [name, job, material, iso, `${date} ${MONTHS[month]} ${year}`]
    .join('\n')
    .toLowerCase();
  texts.set(part, { at, text });
  return text;
}
