import { describe, expect, it } from 'vitest';
import type { Face } from '../../src/core/part/faces';
import { newItem } from '../../src/entry/instruments';
import { defaultKit } from '../../src/entry/kit-entry';
import { type KitItem, withItem } from '../../src/entry/kit-items';
import { waysToBegin } from '../../src/entry/ways-to-begin';
import { countedIds } from './support/ids';
import { asked } from './support/part';
import { micro } from './support/typed';

const newId = countedIds();
const KIT = defaultKit();
const kitWith = (...kinds: readonly KitItem['kind'][]) =>
  kinds.map((kind) => newItem(kind, newId) as KitItem).reduce(withItem, KIT);

const waysFor = (
  asks: readonly (readonly [Face, Face])[],
  { kit = KIT, flat = [] }: { kit?: typeof KIT; flat?: readonly Face[] } = {},
) =>
  waysToBegin(
    {
      datum: 'bottom',
      requirements: asks.map(([face, datum]) => asked(face, datum)),
      flatness: flat.map((face) => ({ id: face, face, tolerance: micro('3') })),
    },
    kit,
  ).map(({ kind, pair }) => `${kind} ${pair.faces.join(' ')} on ${pair.base}`);

describe('what a first inspection has ready', () => {
  it('is a comparator on each pair that is to be square', () => {
    expect(waysFor([['right', 'bottom']])).toEqual(['nose comparator right left on bottom']);
  });

  it('is the thickness of a pair that is to be parallel, once, and no comparator for it', () => {
    const once = ['micrometer top bottom on bottom'];
    expect(waysFor([['top', 'bottom']])).toEqual(once);
    expect(
      waysFor([
        ['top', 'bottom'],
        ['bottom', 'top'],
      ]),
    ).toEqual(once);
    // It stands upright on the part's datum, but a comparator cannot tell.
    expect(waysFor([['right', 'left']])).toEqual(['micrometer right left on left']);
  });

  it('is both where both are asked', () => {
    expect(
      waysFor([
        ['right', 'left'],
        ['right', 'bottom'],
      ]),
    ).toEqual(['nose comparator right left on bottom', 'micrometer right left on left']);
  });

  it('is an indicator over the top where that is what the kit has', () => {
    const top: readonly (readonly [Face, Face])[] = [['top', 'bottom']];
    expect(waysFor(top, { kit: kitWith('indicator') })).toEqual([
      'over the top top bottom on bottom',
    ]);
    for (const kit of [
      kitWith('micrometer'),
      kitWith('indicator', 'micrometer'),
      kitWith('plate'),
    ]) {
      expect(waysFor(top, { kit })).toEqual(['micrometer top bottom on bottom']);
    }
  });

  it('is a map alone where only flatness is asked, and a comparator where nothing is', () => {
    expect(waysFor([], { flat: ['top'] })).toEqual(['face map top bottom on bottom']);
    expect(waysFor([])).toEqual([
      'nose comparator right left on bottom',
      'nose comparator back front on bottom',
    ]);
  });
});
