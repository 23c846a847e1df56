import { describe, expect, it } from 'vitest';
import { chainPrefix, keyOf, PART_PREFIX } from '../../src/store/keys';
import { inspection, part, shop, summary, version, work } from './support/samples';

describe('the key of a record', () => {
  // Keys lie in people's browsers: a change of one loses sight of what is stored.
  it('stays what it has been from the first version on', () => {
    expect([part('p'), inspection('i', 'p'), work('w', 'p'), shop()].map(keyOf)).toEqual([
      'part/p',
      'chain/p/inspection/i',
      'chain/p/work/w',
      'shop',
    ]);
    expect(keyOf(version(inspection('i', 'p')))).toBe(
      'version/chain/p/inspection/i/2024-03-05T14:07:00.000Z',
    );
    expect(keyOf(summary('p'))).toBe('summary/p');
  });

  it('begins with the prefix that it is read by, and with no other', () => {
    expect(keyOf(part('p')).startsWith(PART_PREFIX)).toBe(true);
    expect(keyOf(work('w', 'p10')).startsWith(chainPrefix('p10'))).toBe(true);
    expect(keyOf(work('w', 'p10')).startsWith(chainPrefix('p1'))).toBe(false);
  });
});
