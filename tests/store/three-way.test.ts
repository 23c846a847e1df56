import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSame, putTogether } from '../../src/store/three-way';

const together = (from: unknown, first: unknown, second: unknown) =>
  putTogether({ from, first, second });
const fits = (value: unknown) => ({ value, clashed: false });

describe('two changed states of a value', () => {
  it('are the changed one where only one has changed', () => {
    expect(together('a', 'b', 'a')).toEqual(fits('b'));
    expect(together('a', 'a', 'b')).toEqual(fits('b'));
    expect(together('a', 'b', 'b')).toEqual(fits('b'));
  });

  it('clash where both changed the same piece, and the first has its way', () => {
    expect(together('a', 'b', 'c')).toEqual({ value: 'b', clashed: true });
    expect(together({ x: 1, y: 1 }, { x: 2, y: 1 }, { x: 3, y: 5 })).toEqual({
      value: { x: 2, y: 5 },
      clashed: true,
    });
  });

  it('join field by field, with what either added', () => {
    expect(together({ a: 1, b: 1 }, { a: 2, b: 1, c: 3 }, { a: 1, b: 4, d: 5 })).toEqual(
      fits({ a: 2, b: 4, c: 3, d: 5 }),
    );
  });

  it('lose what one took away and the other left, and keep what the other changed', () => {
    expect(together({ a: 1, b: 1 }, { a: 1 }, { a: 1, b: 1 })).toEqual(fits({ a: 1 }));
    expect(together({ a: 1, b: 1 }, { a: 1 }, { a: 1, b: 2 })).toEqual(fits({ a: 1, b: 2 }));
  });

  it('of a number with its unit are never one number with the other unit', () => {
    const from = { text: '34', unit: 'µm' };
    const [typed, turned] = [
      { text: '41', unit: 'µm' },
      { text: '13.4', unit: 'tenths' },
    ];
    expect(together(from, typed, turned)).toEqual({ value: typed, clashed: true });
  });

  it('of a reading on one face are no reading on another', () => {
    const from = { id: 'p', face: 'right', reading: { text: '', unit: 'µm' } };
    const moved = { ...from, face: 'left' };
    const read = { ...from, reading: { text: '34', unit: 'µm' } };
    expect(together(from, read, moved)).toEqual({ value: read, clashed: true });
  });
});

describe('lists of things with an id', () => {
  const thing = (id: string) => ({ id, text: '' });
  const [a, b, c, d] = [thing('a'), thing('b'), thing('c'), thing('d')];

  it('have what either added, each after what it followed', () => {
    expect(together([a, b], [a, c, b], [a, b, d])).toEqual(fits([a, c, b, d]));
    expect(together([], [a], [b])).toEqual(fits([b, a]));
  });

  it('have not what either took away, unless the other changed it', () => {
    expect(together([a, b, c], [a, c], [b, c])).toEqual(fits([c]));
    const changed = { ...b, text: 'typed' };
    expect(together([a, b], [a], [a, changed])).toEqual(fits([a, changed]));
  });

  it('join within the things, too', () => {
    const typed = [{ ...a, text: '1' }, b];
    const other = [a, { ...b, text: '2' }];
    expect(together([a, b], typed, other)).toEqual(fits([typed[0], other[1]]));
  });

  it('of plain words join likewise, and clash where they hold one twice', () => {
    expect(together(['top'], ['top', 'left'], [])).toEqual(fits(['left']));
    expect(together(['x'], ['x', 'x'], ['y']).clashed).toBe(true);
  });
});

describe('whatever is put together', () => {
  const value = fc.letrec((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      fc.constantFrom('a', 'b', 'c', 1, 2, true),
      fc.dictionary(fc.constantFrom('p', 'q', 'r'), tie('value'), { maxKeys: 3 }),
      fc.uniqueArray(fc.record({ id: fc.constantFrom('i', 'j', 'k'), of: tie('value') }), {
        selector: ({ id }) => id,
        maxLength: 3,
      }),
    ),
  })).value;

  it('is the one where the other is as before', () => {
    fc.assert(
      fc.property(value, value, (from, changed) => {
        expect(together(from, changed, from)).toEqual(fits(changed));
        expect(together(from, from, changed)).toEqual(fits(changed));
      }),
    );
  });

  it('holds every text of both where neither took anything away and nothing clashed', () => {
    fc.assert(
      fc.property(value, value, (first, second) => {
        const { value: both, clashed } = together(undefined, first, second);
        fc.pre(!clashed);
        const texts = leaves(both);
        for (const text of [...leaves(first), ...leaves(second)]) expect(texts).toContain(text);
      }),
    );
  });

  it('clashes the same way round whichever comes first', () => {
    fc.assert(
      fc.property(value, value, value, (from, first, second) => {
        expect(together(from, first, second).clashed).toBe(together(from, second, first).clashed);
      }),
    );
  });
});

function leaves(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [JSON.stringify(value)];
  return Object.values(value).flatMap(leaves);
}

describe('sameness', () => {
  it('goes all through, whatever the order of the fields', () => {
    expect(isSame({ a: [1, { b: 2 }], c: undefined }, { a: [1, { b: 2 }] })).toBe(true);
    expect(isSame({ a: [1, { b: 2 }] }, { a: [1, { b: 3 }] })).toBe(false);
    expect(isSame([], {})).toBe(false);
    expect(isSame(null, undefined)).toBe(false);
  });
});
