import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { forgetLeftBehind, leftBehind, takeDown } from '../../src/store/journal';
import { part } from './support/samples';

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
    takeDown([part('p'), part('q')]);
    expect(leftBehind()).toEqual([]);
    expect((await anotherPage()).leftBehind()).toEqual([part('p'), part('q')]);
  });

  it('holds what was taken down last', async () => {
    takeDown([part('p')]);
    takeDown([part('q')]);
    expect((await anotherPage()).leftBehind()).toEqual([part('q')]);
    takeDown([]);
    expect((await anotherPage()).leftBehind()).toEqual([]);
  });

  it('of another page is forgotten on its word, and the own one stays', async () => {
    takeDown([part('p')]);
    const other = await anotherPage();
    other.takeDown([part('q')]);
    other.forgetLeftBehind();
    expect(leftBehind()).toEqual([part('q')]);
    expect((await anotherPage()).leftBehind()).toEqual([part('q')]);
    forgetLeftBehind();
    expect((await anotherPage()).leftBehind()).toEqual([]);
  });

  it('that is damaged is as none', async () => {
    localStorage.setItem('highedge journal x', '{');
    expect(leftBehind()).toEqual([]);
    localStorage.setItem('highedge journal x', '{"not": "a list"}');
    expect(leftBehind()).toEqual([]);
  });

  it('that the browser refuses is done without', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(() => takeDown([part('p')])).not.toThrow();
    expect(leftBehind()).toEqual([]);
    expect(() => forgetLeftBehind()).not.toThrow();
  });
});
