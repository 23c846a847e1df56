import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { keepPlace, keptPlace } from '../../src/store/place-left';

const PLACE = { part: 'p', address: '/part/p/readings/i', what: 'Left side', field: 'field-left' };

const kept = new Map<string, string>();
beforeEach(() => {
  kept.clear();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => kept.set(name, value),
    removeItem: (name: string) => kept.delete(name),
  });
});
afterEach(() => vi.unstubAllGlobals());

it('a place is kept until another one is, or none', () => {
  expect(keptPlace()).toBeUndefined();
  keepPlace(PLACE);
  expect(keptPlace()).toEqual(PLACE);
  const { field: _, ...work } = PLACE;
  keepPlace(work);
  expect(keptPlace()).toEqual(work);
  keepPlace(undefined);
  expect(keptPlace()).toBeUndefined();
});

it.each(['{', 'null', '3', '{"part": "p"}', JSON.stringify({ ...PLACE, field: 3 })])(
  'what is no place is as none: %s',
  (text) => {
    kept.set('highedge place', text);
    expect(keptPlace()).toBeUndefined();
  },
);

it('a browser that refuses is done without', () => {
  vi.stubGlobal('localStorage', undefined);
  expect(() => keepPlace(PLACE)).not.toThrow();
  expect(keptPlace()).toBeUndefined();
});
