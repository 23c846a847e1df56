import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { leftBehind, takeDown } from '../../src/store/journal';
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

const foundBy = async (page: Pick<typeof import('../../src/store/journal'), 'leftBehind'>) =>
  (await page.leftBehind()).unwritten;

describe('the journal', () => {
  it('is found by the next page, and by this one not', async () => {
    takeDown([P, Q]);
    expect(await foundBy({ leftBehind })).toEqual([]);
    expect(await foundBy(await anotherPage())).toEqual([P, Q]);
  });

  it('holds what was taken down last', async () => {
    takeDown([P]);
    takeDown([Q]);
    expect(await foundBy(await anotherPage())).toEqual([Q]);
    takeDown([]);
    expect(await foundBy(await anotherPage())).toEqual([]);
  });

  it('of another page is forgotten on its word, and the own one stays', async () => {
    takeDown([P]);
    const other = await anotherPage();
    other.takeDown([Q]);
    await (await other.leftBehind()).forget();
    expect(await foundBy({ leftBehind })).toEqual([Q]);
    expect(await foundBy(await anotherPage())).toEqual([Q]);
    await (await leftBehind()).forget();
    expect(await foundBy(await anotherPage())).toEqual([]);
  });

  it('of a page that is still open is not forgotten where it has gone on since', async () => {
    takeDown([P]);
    const other = await (await anotherPage()).leftBehind();
    takeDown([P, Q]);
    await other.forget();
    expect(await foundBy(await anotherPage())).toEqual([P, Q]);
  });

  it('that is damaged is as none, and hides no other', async () => {
    localStorage.setItem('highedge journal x', '{');
    localStorage.setItem('highedge journal y', '{"not": "a list"}');
    localStorage.setItem('highedge journal z', 'null');
    expect(await foundBy({ leftBehind })).toEqual([]);
    localStorage.setItem('highedge journal of the first version', JSON.stringify([part('p')]));
    expect(await foundBy({ leftBehind })).toEqual([part('p')]);
  });

  it('that the browser refuses is done without', async () => {
    vi.stubGlobal('localStorage', undefined);
    expect(() => takeDown([P])).not.toThrow();
    expect(await foundBy({ leftBehind })).toEqual([]);
    await (await leftBehind()).forget();
  });
});

describe('the files of the journal', () => {
  const NAME = 'highedge journal other';

  /** The browser's own files as they lie there: by name, and their texts. */
  function lying(texts: Readonly<Record<string, string>>): Map<string, string> {
    const files = new Map(Object.entries(texts));
    const folder = {
      async *values() {
        for (const [name, text] of [...files]) {
          yield { kind: 'file', name, getFile: async () => ({ text: async () => text }) };
        }
      },
      removeEntry: async (name: string) => {
        if (files.get(name) === 'held') throw new DOMException('', 'NoModificationAllowedError');
        files.delete(name);
      },
    };
    const root = { getDirectoryHandle: async () => folder };
    vi.stubGlobal('navigator', { storage: { getDirectory: async () => root } });
    return files;
  }

  const text = (count: number, ...unwritten: readonly unknown[]) =>
    JSON.stringify({ count, unwritten });

  it('tell what was taken down last, also where local storage is behind', async () => {
    localStorage.setItem(NAME, text(7, P));
    lying({ [`${NAME} 0`]: text(8, P, Q), [`${NAME} 1`]: text(9, Q) });
    expect(await foundBy({ leftBehind })).toEqual([Q]);
    lying({ [`${NAME} 0`]: text(8, P, Q), [`${NAME} 1`]: text(9) });
    expect(await foundBy({ leftBehind })).toEqual([]);
  });

  it('are behind where the page ended before they were written', async () => {
    localStorage.setItem(NAME, text(10, P, Q));
    lying({ [`${NAME} 0`]: text(8, P), [`${NAME} 1`]: text(9, P) });
    expect(await foundBy({ leftBehind })).toEqual([P, Q]);
  });

  it('hold the state before where one was not written to its end', async () => {
    lying({ [`${NAME} 0`]: text(8, P), [`${NAME} 1`]: text(9, Q).slice(0, -3) });
    expect(await foundBy({ leftBehind })).toEqual([P]);
  });

  it('are removed once they are forgotten, but for those of windows that are open', async () => {
    const files = lying({
      [`${NAME} 0`]: text(8, P),
      [`${NAME} 1`]: text(9),
      'of another 0': 'held',
    });
    await (await leftBehind()).forget();
    expect([...files.keys()]).toEqual(['of another 0']);
  });
});
