import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { forgetLeftBehind, leftBehind, takeDown } from '../../src/store/journal';
import { part } from './support/samples';

const P = { record: part('p'), from: part('p').changed };
const Q = { record: part('q') };

/** Local storage as a browser has it: its entries are also its own keys. */
function storage(): Storage {
  const entries: Record<string, string> = {};
  const methods = {
    getItem: (name: string) => entries[name] ?? null,
    setItem: (name: string, value: string) => {
      entries[name] = value;
    },
    removeItem: (name: string) => {
      delete entries[name];
    },
  };
  return new Proxy(entries, {
    get: (_, name) => methods[name as keyof typeof methods] ?? entries[name as string],
  }) as unknown as Storage;
}

beforeEach(() => vi.stubGlobal('localStorage', storage()));
afterEach(() => vi.unstubAllGlobals());

/** The journal of another page, which knows nothing of this one's. */
async function anotherPage(): Promise<typeof import('../../src/store/journal')> {
  vi.resetModules();
  return import('../../src/store/journal');
}

describe('the journal', () => {
  it('is found by the next page, and by this one not', async () => {
    takeDown([P, Q]);
    expect(leftBehind()).toEqual([]);
    expect((await anotherPage()).leftBehind()).toEqual([P, Q]);
  });

  it('holds what was taken down last', async () => {
    takeDown([P]);
    takeDown([Q]);
    expect((await anotherPage()).leftBehind()).toEqual([Q]);
    takeDown([]);
    expect((await anotherPage()).leftBehind()).toEqual([]);
  });

  it('of another page is forgotten on its word, and the own one stays', async () => {
    takeDown([P]);
    const other = await anotherPage();
    other.takeDown([Q]);
    other.forgetLeftBehind();
    expect(leftBehind()).toEqual([Q]);
    expect((await anotherPage()).leftBehind()).toEqual([Q]);
    forgetLeftBehind();
    expect((await anotherPage()).leftBehind()).toEqual([]);
  });

  it('that is damaged is as none', async () => {
    localStorage.setItem('highedge journal x', '{');
    expect(leftBehind()).toEqual([]);
    localStorage.setItem('highedge journal x', '{"not": "a list"}');
    expect(leftBehind()).toEqual([]);
    localStorage.setItem('highedge journal y', JSON.stringify([Q]));
    expect(leftBehind()).toEqual([Q]);
  });

  it('that the browser refuses is done without', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(() => takeDown([P])).not.toThrow();
    expect(leftBehind()).toEqual([]);
    expect(() => forgetLeftBehind()).not.toThrow();
  });
});
