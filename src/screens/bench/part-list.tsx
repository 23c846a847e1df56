import { computed, signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { DEFAULT_LEVEL } from '../../core/verdict/conformity';
import {
  type Asked,
  findParts,
  type ListedPart,
  listed,
  type PartState,
  prepareSearch,
  shelfOf,
} from '../../state/find-parts';
import { loading, parts } from '../../state/shop';
import { level } from '../../state/shop-settings';
import { Choice } from '../../widgets/choice';
import { Later } from '../../widgets/later';
import { SearchField } from '../../widgets/search-field';
import { countInWords, noneInWords, STATE_LABELS } from '../../words/part-states';
import { PartCard } from './part-card';
import { Removed } from './removed';

/** What is asked for stays while one looks at a part and comes back. */
const asked = signal<Asked>({ words: '', state: 'any', shelf: 'bench' });

/** Parts that are drawn at first, and with each tap for more. */
const PAGE = 30;
const pages = signal(1);

const found = computed(() => findParts(listed.value, asked.value, level.value ?? DEFAULT_LEVEL));

/** Parts that a phone shows at once, beside the search: they come in the frame of the key, the rest after it. */
const IN_SIGHT = 8;

/** From so many parts on there is something to search. */
const MANY = 6;

const STATES = [
  ['any', 'All'],
  ...(Object.entries(STATE_LABELS) as [PartState, string][]),
] as const;

const SHELVES = [
  ['bench', 'On the bench'],
  ['archive', 'Archive'],
  ['removed', 'Removed'],
] as const;

/** The parts that are asked for, as it is typed; so many at a time that thousands stay as quick as ten. */
export function PartList() {
  useSettledParts();
  const ask = (changed: Partial<Asked>) => {
    asked.value = { ...asked.value, ...changed };
    pages.value = 1;
  };
  const cards = useRef<HTMLUListElement>(null);
  const { words, state, shelf } = asked.value;
  const shown = found.value.slice(0, pages.value * PAGE);
  const isOnlyBench = [...parts.value.values()].every((part) => shelfOf(part) === 'bench');
  return (
    <section class="stack" aria-labelledby="parts-heading">
      <h2 id="parts-heading">Parts</h2>
      <Removed />
      {parts.value.size >= MANY && (
        <>
          <SearchField
            id="find-parts"
            label="Find by name, job, material or date"
            text={words}
            onText={(text) => ask({ words: text })}
            onEnter={() => cards.current?.querySelector('a')?.focus()}
          />
          <Choice
            name="find-state"
            legend="Where they stand"
            options={STATES}
            chosen={state}
            onChoose={(chosen) => ask({ state: chosen })}
          />
        </>
      )}
      {!isOnlyBench && (
        <Choice
          name="find-shelf"
          legend="Which parts"
          options={SHELVES}
          chosen={shelf}
          onChoose={(chosen) => ask({ shelf: chosen })}
        />
      )}
      <p class="soft small" role="status">
        {found.value.length === 0
          ? noneInWords(words.trim() !== '' || state !== 'any')
          : countInWords(shown.length, found.value.length)}
      </p>
      <ul ref={cards} class="cards">
        {cardsOf(shown.slice(0, IN_SIGHT))}
        <Later turns={1}>{cardsOf(shown.slice(IN_SIGHT))}</Later>
      </ul>
      {shown.length < found.value.length && (
        <button type="button" class="button" onClick={() => (pages.value += 1)}>
          Show more
        </button>
      )}
    </section>
  );
}

function cardsOf(some: readonly ListedPart[]) {
  return some.map((one) => (
    <li key={one.part.id}>
      <PartCard listed={one} />
    </li>
  ));
}

/** Has the search prepared, and worked out where the parts stand of which it is not known, while the list is seen. */
function useSettledParts(): void {
  const isReady = loading.value === 'ready';
  useEffect(() => {
    if (!isReady) return;
    let isSeen = true;
    // The reckoning is heavy: it is not loaded for the list to be seen.
    const settle = async () => {
      await prepareSearch(() => isSeen);
      const { settleAll } = await import('../../state/settling');
      const ids = listed.peek().map(({ part }) => part.id);
      await settleAll(ids, () => isSeen);
      const { settleFound } = await import('../../state/found');
      await settleFound(() => isSeen);
    };
    settle()
      // Those parts then show no state in the list; opened, they say it.
      .catch((error: unknown) => console.error(error));
    return () => {
      isSeen = false;
    };
  }, [isReady]);
}
