import { describe, expect, it } from 'vitest';
import { atCorners, highSide } from '../../../../src/core/correction/removal';
import { cutDepths } from '../../../../src/core/correction/setting/cut-depths';
import { presentRises } from '../../../../src/core/correction/setting/present-rise';
import { type Shims, shimsFor } from '../../../../src/core/correction/setting/shims';
import { axesInFace, FACES, type Face, outwardNormal } from '../../../../src/core/part/faces';
import { NORMALS } from '../../support/exact-block';
import { plus, times, type Vector } from '../../support/exact-vectors';
import { known } from '../../support/known';
import { manyRandoms, type Random } from '../../support/random';
import { BLOCK } from '../../support/worked-block';
import {
  exactCorners,
  type Job,
  onFace,
  planeThrough,
  someJob,
  trueTapers,
  worstOfCut,
} from './support/exact-setting';

const SLOPE = 0.1;
const JOBS = 120;

type Three = readonly [Vector, Vector, Vector];

function cutLevel(job: Job, level: ReturnType<typeof planeThrough>): number {
  const { full } = cutDepths(BLOCK, job.removal);
  return worstOfCut(job, level, full, atCorners(BLOCK, job.removal));
}

/** The block turned until an indicator over the face rises as it should, then cut. */
function cutByIndicator(job: Job): number {
  const { block, removal } = job;
  const rises = presentRises(BLOCK, removal);
  const below = exactCorners(block, removal.face).map(({ at, towards }) => {
    const rise = rises
      .filter(({ high }) => towards.includes(high))
      .reduce((total, one) => total + one.rise, 0);
    return plus(at, times(NORMALS[removal.face], -rise / 1000));
  });
  const [a, b, c] = below;
  return cutLevel(job, planeThrough([a!, b!, c!], NORMALS[removal.face]));
}

/** Where a support stands: at the edges it rests on, or as far from them as the shim bears. */
function standsAt(on: Face, towards: readonly [Face, Face], { edges }: Shims): Vector {
  const { axis, sign } = outwardNormal(on);
  const place = { x: 0, y: 0, z: 0, [axis]: (sign * BLOCK.size[axis]) / 2 };
  for (const side of towards) {
    const normal = outwardNormal(side);
    const half = BLOCK.size[normal.axis] / 2;
    const span = edges.find(({ under }) => under === side)?.span ?? 2 * half;
    place[normal.axis] = normal.sign * (span - half);
  }
  return [place.x, place.y, place.z];
}

/** The block put on its shims, at `skipped` none, and cut level with the table. */
function cutOnShims(job: Job, random: Random, isInset: boolean, skipped: number): number {
  const { block, removal } = job;
  const spans = Object.fromEntries(
    axesInFace(removal.face).map((axis) => [axis, BLOCK.size[axis] * random.between(0.3, 1)]),
  );
  const tapers = trueTapers(block, removal.face);
  const shims = known(shimsFor(BLOCK, removal, tapers, isInset ? spans : {}));
  const feet = shims.corners.map(({ towards, thickness }) => {
    const touched = onFace(block, shims.on, standsAt(shims.on, towards, shims));
    return plus(touched, times(NORMALS[shims.on], thickness / 1000));
  });
  const three = feet.filter((_, index) => index !== skipped) as unknown as Three;
  return cutLevel(job, planeThrough(three, NORMALS[removal.face]));
}

function worst(slope: number, cutting: (job: Job, random: Random, index: number) => number) {
  return Math.max(
    ...manyRandoms(JOBS).map((random, index) => cutting(someJob(random, slope), random, index)),
  );
}

describe('a cut of an exact block, set as it should be', () => {
  it.each<[string, (job: Job, random: Random, index: number) => number]>([
    ['by the indicator', cutByIndicator],
    // Any three of the four supports carry it as the four do.
    ['on shims at the edges', (job, random, index) => cutOnShims(job, random, false, index % 4)],
    ['on shims farther in', (job, random, index) => cutOnShims(job, random, true, index % 4)],
  ])('takes off what was asked, but for the second order: %s', (_, cutting) => {
    const [all, tenth] = [worst(SLOPE, cutting), worst(SLOPE / 10, cutting)];
    // A corner lies up to 0.03 mm off the drawing and the removal slopes by up to 4·s µm/mm.
    expect(all).toBeLessThan(0.03 * 4 * SLOPE * 2);
    expect(all / tenth).toBeGreaterThan(80);
    expect(all / tenth).toBeLessThan(120);
  });

  it('is of every face, with removals of tens of µm', () => {
    const jobs = manyRandoms(JOBS).map((random) => someJob(random, SLOPE));
    expect(new Set(jobs.map(({ removal }) => removal.face)).size).toBe(FACES.length);
    const deepest = jobs.map(({ removal }) => cutDepths(BLOCK, removal).full);
    expect(Math.max(...deepest)).toBeGreaterThan(20);
    expect(jobs.every(({ removal }) => highSide(removal).length === 2)).toBe(true);
  });
});
