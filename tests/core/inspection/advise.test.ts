import { describe, expect, it } from 'vitest';
import { advise } from '../../../src/core/inspection/advise';
import { inspect } from '../../../src/core/inspection/inspect';
import { nextReading } from '../../../src/core/inspection/next-reading';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { adviceOn, HALF } from '../support/advised';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, micrometer, nose, traverse } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

const SQUARE = requirement('right', 'bottom', 3);
const READINGS = [nose('right', 34), nose('left', 31), assumedParallel('right')];

describe('what is advised', () => {
  it('is of the requirements that the readings fix, and of no other', () => {
    const part = partWith([requirement('back', 'bottom'), SQUARE, requirement('right', 'left')]);
    const answer = inspect(part, READINGS, DEFAULT_KIT, HALF.level);
    const { next, plans } = advise(part, answer, HALF);
    const { readings, kit, findings, adjustment } = answer;
    expect(next).toEqual(nextReading(part, readings, kit, findings, adjustment));
    expect(next?.requirement).toBe(SQUARE.id);
    expect(plans.best.effects.map(({ requirement: { id } }) => id)).toEqual([SQUARE.id]);
  });

  it('is the same where it is worked out piece by piece, in any order', () => {
    const part = partWith([SQUARE]);
    const answer = inspect(part, READINGS, DEFAULT_KIT, HALF.level);
    const advice = advise(part, answer, HALF);
    // One for each face, one for all of them, and what is made of these.
    expect(advice.pieces).toHaveLength(8);
    for (const piece of [...advice.pieces].reverse()) piece();
    expect(advice.plans).toEqual(advise(part, answer, HALF).plans);
    expect(advice.plans).toBe(advice.plans);
  });

  it('keeps off the faces that are finished', () => {
    const { plans } = adviceOn(partWith([SQUARE], ['bottom', 'right']), READINGS);
    expect(plans.best.possible).toBe(false);
    expect(plans.releases).toEqual(['bottom', 'right']);
  });

  it('goes by the level and the share that are asked for', () => {
    const part = partWith([SQUARE]);
    const answer = inspect(part, READINGS, DEFAULT_KIT, 0.95);
    const [effect, surer, whole] = [HALF, { ...HALF, level: 0.99 }, { ...HALF, share: 1 }].map(
      (demand) => known(advise(part, answer, demand).plans.best.effects[0]),
    );
    expect([effect?.allowed, surer?.allowed, whole?.allowed]).toEqual([1.5, 1.5, 3]);
    expect(surer!.guard).toBeGreaterThan(1.2 * effect!.guard);
    expectClose(whole?.guard, effect!.guard);
  });

  it('stops at the limits of the sizes that the readings fix', () => {
    const tops = [
      [-25, -15],
      [-25, 15],
      [25, 0],
    ].map(([x, y]) => micrometer('top', { x: x!, y: y! }, -4));
    const finished = ['right', 'left', 'back', 'front', 'top'] as const;
    const part = partWith([requirement('right', 'bottom', 1)], finished);
    const limited = { ...part, sizeLimits: { z: { lower: -4 } } };
    expect(adviceOn(part, [...READINGS, ...tops]).plans.best.stops).toEqual([]);
    expect(adviceOn(limited, [...READINGS, ...tops]).plans.best.stops).toMatchObject([
      { kind: 'size', axis: 'z' },
    ]);
    // What has not been measured cannot be held.
    expect(adviceOn(limited, READINGS).plans.best.stops).toEqual([]);
  });

  it('counts with the form that the readings show', () => {
    // A hollow of 20 µm half way up both sides is no lean.
    const up = (face: 'right' | 'left') => traverse(face, { 5: 0, 45: -20, 85: 0 });
    const readings = [...up('right'), ...up('left'), assumedParallel('right')];
    const { next, plans } = adviceOn(partWith([SQUARE]), readings);
    const effect = known(plans.best.effects[0]);
    expectClose(effect.before.width, 0, { absolute: 1e-9 });
    expect(effect.withForm.before).toBeGreaterThan(15);
    expect(effect.formAlone).toBe(true);
    expect(next?.hasForm).toBe(true);
    expect(adviceOn(partWith([SQUARE]), READINGS).next?.hasForm).toBe(false);
  });
});

describe('nothing is advised', () => {
  it('where nothing is fixed: no reading, and no face to work', () => {
    const { next, plans } = adviceOn(partWith([SQUARE]), []);
    expect(next).toBeUndefined();
    expect(plans.best).toMatchObject({ possible: true, steps: [], effects: [] });
    expect(plans.releases).toEqual([]);
  });

  it.each([
    ['a level', { level: 0.5, share: 0.5 }],
    ['a share', { level: 0.95, share: 0 }],
  ])('where %s is none', (_, demand) => {
    const part = partWith([SQUARE]);
    const answer = inspect(part, READINGS, DEFAULT_KIT, 0.95);
    expect(() => advise(part, answer, demand).plans).toThrow(RangeError);
  });
});
