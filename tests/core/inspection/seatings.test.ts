import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { assumedParallel, nose } from '../support/readings';
import { BLOCK } from '../support/worked-block';

const READ = [nose('right', 34), nose('left', 31), assumedParallel('right', 0.1)];

/** The finding on the right side, which is 1.824 µm out of square over its 90 mm. */
function findingWithin(tolerance: number, readings: readonly Reading[] = READ) {
  const requirements = [{ id: 'right', face: 'right', datum: 'bottom', tolerance } as const];
  const part = { block: BLOCK, datum: 'bottom', requirements, finished: [] } as const;
  const [finding] = inspect(part, readings, DEFAULT_KIT, DEFAULT_LEVEL).findings;
  if (finding?.fixed !== true) throw new Error('The readings fix it');
  return finding;
}

/** Both sides seated and read as many times more, with the same outcome. */
function again(times: number): readonly Reading[] {
  return Array.from({ length: times }, (_, index) =>
    [nose('right', 34), nose('left', 31)].map((one) => ({ ...one, id: `${one.id} ${index}` })),
  ).flat();
}

describe('the seatings that would settle a verdict', () => {
  it('are not asked for where it is settled', () => {
    expect(findingWithin(5)).toMatchObject({ verdict: 'in' });
    expect(findingWithin(5).seatings).toBeUndefined();
    expect(findingWithin(0.1).seatings).toBeUndefined();
  });

  it('are the least number that does it: one less does not', () => {
    const finding = findingWithin(2.4);
    expect(finding.verdict).toBe('too close to call');
    const { seatings } = finding;
    if (typeof seatings !== 'number') throw new Error('Some seatings do');
    expect(seatings).toBeGreaterThan(1);
    expect(findingWithin(2.4, [...READ, ...again(seatings)]).verdict).toBe('in');
    expect(findingWithin(2.4, [...READ, ...again(seatings - 1)]).verdict).toBe('too close to call');
  });

  it('are more the closer the value lies to the limit, and none on it', () => {
    const [nearer, further] = [findingWithin(2.3).seatings, findingWithin(2.6).seatings];
    expect(Number(nearer)).toBeGreaterThan(Number(further));
    expect(findingWithin(1.8244).verdict).toBe('too close to call');
    expect(findingWithin(1.8244).seatings).toBe('none');
  });
});
