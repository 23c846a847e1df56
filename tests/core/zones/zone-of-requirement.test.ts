import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { zoneOfRequirement } from '../../../src/core/zones/zone-of-requirement';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose } from '../support/readings';
import { BLOCK, requirement } from '../support/worked-block';

/** Heights and places without doubt, to keep the sums short. */
const KIT = { ...DEFAULT_KIT, heightSetting: 0 };
const PARALLEL = requirement('right', 'left');

function zone(one: typeof PARALLEL, readings: readonly Reading[]) {
  return zoneOfRequirement(one, BLOCK, adjust(equationsOf(readings, BLOCK, KIT)));
}

function corner(y: number, z: number, departure: number) {
  return micrometer('right', { y, z }, departure);
}

describe('parallelism by micrometer at three corners', () => {
  // With A at the lower front, B at the lower back and C at the upper front: the parts of the zone
  // are B - A and C - A. They share A, hence a covariance of u².
  const variance = 1 / 12 + 0.5 ** 2 / 3;
  const read = (B: number, C: number) =>
    known(zone(PARALLEL, [corner(-20, -45, 1), corner(20, -45, B), corner(-20, 45, C)]));

  it('is as wide as the two differences together', () => {
    expectClose(read(4, 6).width, 3 + 5);
    expectClose(read(4, -6).width, 3 + 7);
    expectClose(read(4, 6).covariance, variance);
  });

  it('doubts the shared corner twice where the tapers go the same way, not at all otherwise', () => {
    // (B - A) + (C - A) = B + C - 2A, and (B - A) - (C - A) = B - C.
    expectClose(read(4, 6).standard, Math.sqrt(6 * variance));
    expectClose(read(-4, -6).standard, Math.sqrt(6 * variance));
    expectClose(read(4, -6).standard, Math.sqrt(2 * variance));
  });

  it('rests on all three, and on nothing else that was read', () => {
    const corners = [corner(-20, -45, 1), corner(20, -45, 4), corner(-20, 45, 6)];
    const others = [nose('back', 3), nose('front', 4), assumedParallel('back')];
    const { restsOn } = known(zone(PARALLEL, [...others, ...corners]));
    expect([...restsOn].sort()).toEqual(corners.map(({ id }) => id).sort());
  });

  it('is open with two, though one of the tapers is fixed', () => {
    expect(zone(PARALLEL, [corner(0, -45, 1), corner(0, 45, 4)])).toBeUndefined();
  });
});

describe('squareness', () => {
  it('has one part, with its sign and uncertainty, over the height of the face', () => {
    const readings = [nose('right', 31), nose('left', 34), assumedParallel('right')];
    const square = known(zone(requirement('right', 'bottom'), readings));
    expect(square.parts).toHaveLength(1);
    expectClose(square.parts[0]?.value, (-3 / 148) * 90);
    expectClose(square.width, (3 / 148) * 90);
    expect(square.standard).toBe(square.parts[0]?.standard);
    expect(square.covariance).toBe(0);
  });
});
