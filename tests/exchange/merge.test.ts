import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '../../src/exchange/merge/canonical';
import { lineagesOf, recordsOf } from '../../src/exchange/merge/lineages';
import { MERGED } from '../../src/exchange/merge/unite';
import type { KeptRecord } from '../../src/exchange/shape/records';
import { part } from '../store/support/samples';
import { relatedShops } from './support/shops';

/** What two devices come to together, in an order that does not hang on theirs. */
function merged(...shops: readonly (readonly KeptRecord[])[]): KeptRecord[] {
  const all = [...lineagesOf(shops.flat()).values()].flatMap((one) => [...recordsOf(one).values()]);
  return all.sort((a, b) => (canonical(a) < canonical(b) ? -1 : 1));
}

describe('a merge', () => {
  it('is all one in which order devices are merged', () => {
    fc.assert(
      fc.property(relatedShops(2), ([one = [], other = []]) => {
        expect(merged(other, one)).toEqual(merged(one, other));
      }),
    );
  });

  it('is all one which two of three are merged first', () => {
    fc.assert(
      fc.property(relatedShops(3), ([one = [], other = [], third = []]) => {
        const first = merged(merged(one, other), third);
        expect(merged(one, merged(other, third))).toEqual(first);
        expect(merged(merged(third, one), other)).toEqual(first);
      }),
    );
  });

  it('changes nothing the second time', () => {
    fc.assert(
      fc.property(relatedShops(2), ([one = [], other = []]) => {
        const once = merged(one, other);
        expect(merged(once, other)).toEqual(once);
        expect(merged(once, one)).toEqual(once);
        expect(merged(once)).toEqual(once);
      }),
    );
  });

  it('loses no state of any record', () => {
    const states = (records: readonly KeptRecord[]) =>
      new Set(records.map((one) => canonical(one.kind === 'version' ? one.record : one)));
    fc.assert(
      fc.property(relatedShops(2), ([one = [], other = []]) => {
        expect(states(merged(one, other))).toEqual(states([...one, ...other]));
      }),
    );
  });

  it('never has two records under one key', () => {
    fc.assert(
      fc.property(relatedShops(3), (shops) => {
        const lineages = [...lineagesOf(shops.flat()).values()];
        const count = lineages.reduce((sum, one) => sum + recordsOf(one).size, 0);
        const versions = lineages.flatMap((one) => one.versions);
        expect(count).toBe(versions.length + lineages.filter((one) => one.current).length);
      }),
    );
  });
});

describe('of two states of a part', () => {
  const early = { ...part('p', 'Early'), changed: '2024-03-05T15:00:00.000Z' };
  const late = { ...part('p', 'Late'), changed: '2024-03-05T16:00:00.000Z' };

  it('the later goes on and the earlier is kept', () => {
    const all = merged([late], [early]);
    expect(all).toContainEqual(late);
    expect(all).toContainEqual({
      ...{ format: 2, kind: 'version', of: 'part/p', id: early.changed, record: early },
      ...{ made: early.changed, changed: early.changed, why: MERGED },
    });
    expect(all).toHaveLength(2);
  });

  it('that were changed at one moment both are kept, the same one going on either way', () => {
    const twin = { ...part('p', 'Twin'), changed: late.changed };
    const both = merged([late], [twin]);
    expect(both).toHaveLength(2);
    expect(both).toEqual(merged([twin], [late]));
  });
});
