import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keep, type SavingState, savingState } from '../../src/state/saving';
import { loadParts } from '../../src/store/shop-store';
import { storedKeys } from '../store/support/database';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { failOnceAt } from './support/full-disk';

beforeEach(async () => {
  await startAfresh();
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
});
afterEach(async () => {
  vi.restoreAllMocks();
  // Each test leaves with all written, whatever it began with.
  keep([part('last')]);
  await saving('saved');
});

/** The states that the saving goes through from now on. */
function watched(): SavingState[] {
  const states: SavingState[] = [];
  savingState.subscribe((state) => {
    states.push(state);
  });
  return states;
}

describe('keeping records', () => {
  it('is saving at once and saved once they are in the database', async () => {
    const states = watched();
    keep([part('p'), part('q')]);
    expect(savingState.value).toBe('saving');
    await saving('saved');
    expect(await storedKeys()).toEqual(['part/p', 'part/q']);
    expect(states).toEqual(['saved', 'saving', 'saved']);
  });

  it('is saved only when the last of several is, and ends with the last', async () => {
    const states = watched();
    for (const name of ['T', 'Tr', 'Try', 'Try s']) keep([part('p', name)]);
    await saving('saved');
    expect(states).toEqual(['saved', 'saving', 'saved']);
    expect((await loadParts()).records).toEqual([part('p', 'Try s')]);
    expect(console.error).not.toHaveBeenCalled();
  });
});

describe('records that cannot be written', () => {
  it('are told as not saved, with the reason for the console', async () => {
    failOnceAt('p');
    keep([part('p')]);
    await saving('not saved');
    expect(await storedKeys()).toEqual([]);
    expect(console.error).toHaveBeenCalledOnce();
  });

  it('are told until a write works', async () => {
    failOnceAt('p');
    keep([part('p')]);
    await saving('not saved');
    keep([part('p', 'Again')]);
    expect(savingState.value).toBe('not saved');
    await saving('saved');
    expect((await loadParts()).records).toEqual([part('p', 'Again')]);
  });

  it('are in the database once it says saved, even where only others were changed since', async () => {
    failOnceAt('p');
    keep([part('p')]);
    await saving('not saved');
    keep([part('q')]);
    await saving('saved');
    expect(await storedKeys()).toEqual(['part/p', 'part/q']);
  });

  it('are not forgotten for another write that was under way', async () => {
    failOnceAt('p');
    keep([part('p')]);
    keep([part('q')]);
    await saving('saved');
    expect(await storedKeys()).toEqual(['part/p', 'part/q']);
  });
});
