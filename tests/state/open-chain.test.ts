import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { chain, openChain } from '../../src/state/chain';
import { changeSetups } from '../../src/state/plate-changes';
import { unread } from '../../src/state/shop';
import * as shopStore from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { putAnything } from '../store/support/database';
import { inspection } from '../store/support/samples';
import { startAfresh } from './support/fresh';

vi.mock('../../src/store/shop-store', { spy: true });

beforeEach(startAfresh);
afterEach(() => {
  vi.resetAllMocks(); // the answers that were not asked for, too
});

type Loaded = Awaited<ReturnType<typeof shopStore.loadChain>>;
const holding = (...records: Loaded['records']): Loaded => ({ records, unread: [] });

/** The next loading answers only when it is told to. */
function slowAnswer(): (loaded: Loaded) => void {
  let answer: (loaded: Loaded) => void = () => undefined;
  const loading = new Promise<Loaded>((resolve) => {
    answer = resolve;
  });
  vi.mocked(shopStore.loadChain).mockReturnValueOnce(loading);
  return answer;
}

describe('opening a chain', () => {
  it('tells how many records could not be read', async () => {
    await putAnything('chain/p/inspection/bad', 'nonsense');
    await putAnything('chain/p/work/later', { kind: 'work', format: 99 });
    await openChain('p');
    expect(unread.value).toEqual([
      { key: 'chain/p/inspection/bad', reason: 'damaged' },
      { key: 'chain/p/work/later', reason: 'newer' },
    ]);
    expect(chain.value).toEqual({ part: 'p', links: [] });
  });

  it('that is open already leaves it alone', async () => {
    await openChain('p');
    const before = chain.value;
    await openChain('p');
    expect(chain.value).toBe(before);
    expect(shopStore.loadChain).toHaveBeenCalledOnce();
  });

  it('late does not take the place of one that was asked for since', async () => {
    const answer = slowAnswer();
    const late = openChain('slow');
    await openChain('p');
    answer(holding(inspection('s', 'slow')));
    await late;
    expect(chain.value?.part).toBe('p');
  });

  it('twice does not undo what was changed between the two answers', async () => {
    const [first, second] = [slowAnswer(), slowAnswer()];
    const opening = [openChain('p'), openChain('p')];
    first(holding(inspection('i', 'p')));
    await opening[0];
    changeSetups(inspection('i', 'p'), () => [noseSetup()]);
    second(holding(inspection('i', 'p')));
    await opening[1];
    expect(chain.value?.links).toEqual([{ ...inspection('i', 'p'), setups: [noseSetup()] }]);
  });
});
