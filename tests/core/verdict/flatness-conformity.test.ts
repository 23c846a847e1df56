import { describe, expect, it } from 'vitest';
import {
  probabilityOfFlatness,
  WIDE_MAP_DRAWS,
  type WideMap,
  wideMapDraws,
} from '../../../src/core/verdict/flatness-conformity';
import { minimumZonePlane } from '../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../src/core/zones/form/points';
import { expectClose } from '../support/close';
import { type Random, randomFrom } from '../support/random';
import { widthByEveryReference } from '../zones/form/support/every-reference';

const NOISE = 0.5;

/** Nine places with a form of the shape of `height`, `width` µm wide. */
function face(width: number, height: (x: number, y: number) => number): readonly FacePoint[] {
  const points = Array.from({ length: 9 }, (_, index) => {
    const [x, y] = [(index % 3) - 1, Math.floor(index / 3) - 1];
    return { u: 20 * x, v: 15 * y, deviation: height(x, y) };
  });
  const shape = minimumZonePlane(points).width;
  return points.map((point) => ({ ...point, deviation: (point.deviation * width) / shape }));
}

function noisy(points: readonly FacePoint[], random: Random): readonly FacePoint[] {
  return points.map((point) => ({
    ...point,
    deviation: point.deviation + NOISE * random.normal(),
  }));
}

/** What was read, as `flatnessFindings` has it simulated. */
function wideMap(points: readonly FacePoint[], tolerance: number): WideMap {
  const { width, residuals } = minimumZonePlane(points);
  const levelled = points.map((point, index) => ({ ...point, deviation: residuals[index]! }));
  return { points: levelled, standards: points.map(() => NOISE), width, tolerance };
}

const bowl = (x: number, y: number) => x * x + y * y;

describe('a map wider than its tolerance', () => {
  it('is as likely of a flat enough face as another simulation has it', () => {
    const map = wideMap(noisy(face(4, bowl), randomFrom(3)), 3.4);
    // Cut off at two planes, other random numbers, and the width by all of the references.
    const cut = map.points.map((point) => ({
      ...point,
      deviation: Math.max(-1.7, Math.min(1.7, point.deviation)),
    }));
    const random = randomFrom(11);
    const count = 1000;
    let asWide = 0;
    for (let draw = 0; draw < count; draw += 1) {
      if (widthByEveryReference(noisy(cut, random), 2) >= map.width) asWide += 1;
    }
    const part = wideMapDraws(map)(WIDE_MAP_DRAWS);
    expect(part).toBeGreaterThan(0.01);
    expect(part).toBeLessThan(0.5);
    // Four standard deviations of the coarser of the two.
    expectClose(asWide / count, part, { absolute: 4 * Math.sqrt((part * (1 - part)) / count) });
  });

  it('says the same of the same map, however many are drawn at a time', () => {
    const map = wideMap(noisy(face(4, bowl), randomFrom(5)), 2.5);
    const inTurns = wideMapDraws(map);
    for (let turn = 0; turn < 9; turn += 1) inTurns(100);
    expect(inTurns(100)).toBe(wideMapDraws(map)(1000));
  });

  it('is the less likely the less the drawing allows, and never more than a half', () => {
    const points = noisy(face(4, bowl), randomFrom(7));
    const { width } = wideMap(points, 0);
    const parts = [0, 1, 2, 3, 0.999 * width].map((tolerance) =>
      wideMapDraws(wideMap(points, tolerance))(2000),
    );
    expect(parts).toEqual([...parts].sort((a, b) => a - b));
    expect(parts[0]).toBe(0);
    expect(parts.at(-1)).toBe(0.5);
  });

  it('without noise is none of a flat enough face', () => {
    const map = wideMap(face(4, bowl), 3.9);
    expect(wideMapDraws({ ...map, standards: map.standards.map(() => 0) })(100)).toBe(0);
  });
});

describe('faces exactly at their limit', () => {
  const shapes = {
    saddle: (x: number, y: number) => x * y,
    bowl,
    'high place': (x: number, y: number) => (x === 0 && y === 0 ? 1 : 0),
  };
  const count = 400;

  /** How often they are called in and out at 95 %, and how often out without the simulation. */
  function calls(shape: (x: number, y: number) => number, tolerance: number) {
    const random = randomFrom(2024);
    const called = { in: 0, out: 0, outAtOnce: 0 };
    for (let index = 0; index < count; index += 1) {
      const points = noisy(face(tolerance, shape), random);
      const { width, upper, lower } = minimumZonePlane(points);
      const standard = NOISE * Math.hypot(...[...upper, ...lower].map(({ share }) => share));
      const probability = probabilityOfFlatness(width, standard, tolerance);
      if (probability >= 0.95) called.in += 1;
      if (probability > 0.05) continue;
      called.outAtOnce += 1;
      if (wideMapDraws(wideMap(points, tolerance))(400) <= 0.05) called.out += 1;
    }
    return called;
  }

  it.each(Object.entries(shapes))('with a %s are seldom called in, or out', (_, shape) => {
    const called = calls(shape, 3);
    // 5 % of 400 are 20, with a standard deviation of 4.4; a high place comes to 9 %.
    expect(called.in).toBeLessThan(34);
    expect(called.out).toBeLessThan(54);
  });

  it('and flat to within the noise would be called out wrongly, were noise left out', () => {
    const called = calls(bowl, 0.5);
    expect(called.outAtOnce).toBeGreaterThan(0.2 * count);
    expect(called.out).toBeLessThan(0.1 * count);
  });
});
