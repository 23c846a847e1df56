import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/core/correction/plan/plan';
import { FACES, type Face } from '../../../../src/core/part/faces';
import { expectClose } from '../../support/close';
import { manyRandoms } from '../../support/random';
import { cornerProgram, valuesByHighs } from './support/corner-program';
import { ANYTHING, anyProblem, type Problem, plansOf } from './support/problems';

const BLOCKS = 400;

/** The least volume by HiGHS; undefined where there is no plan. */
function volumeByHighs(problem: Problem, faces: readonly Face[]): number | undefined {
  return valuesByHighs(cornerProgram(problem, faces, false))?.[0];
}

function expectSameByHighs(problem: Problem, plan: Plan): void {
  const volume = volumeByHighs(problem, plan.faces);
  expect(plan.possible).toBe(volume !== undefined);
  if (volume !== undefined) expectClose(plan.volume, volume, { absolute: 1e-6, relative: 1e-7 });
  else expectSameStops(problem, plan);
}

/** Excess over tolerance, then shortfall, then volume, are each as little as HiGHS makes them. */
function expectSameStops(problem: Problem, plan: Plan): void {
  const [excess, shortfall, volume] = valuesByHighs(cornerProgram(problem, plan.faces, true))!;
  let [own, short] = [0, 0];
  for (const stop of plan.stops) {
    if (stop.kind === 'size') short += stop.shortfall;
    else own += stop.excess / stop.requirement.tolerance;
  }
  expectClose(own, excess!, { absolute: 1e-7 });
  expectClose(short, shortfall!, { absolute: 1e-6 });
  expectClose(plan.volume, volume!, { absolute: 1e-4, relative: 1e-5 });
}

describe('plans for any block, requirements, doubt, form, sizes and finished faces', {
  timeout: 300_000,
}, () => {
  it.each([
    ['as they come', ANYTHING],
    ['with many faces finished', { ...ANYTHING, finished: 0.6 }],
    ['with form everywhere', { ...ANYTHING, form: 1 }],
    ['with all sizes limited', { ...ANYTHING, limit: 1 }],
  ])('take the least stock, or are stopped by the least, as HiGHS has it: %s', (_, likely) => {
    let [possible, stopped] = [0, 0];
    for (const random of manyRandoms(BLOCKS / 4)) {
      const problem = anyProblem(random, likely);
      const { best, single } = plansOf(problem);
      expect(best.faces).toEqual(FACES.filter((face) => !problem.part.finished.includes(face)));
      expect(single.map(({ faces }) => faces[0]).sort()).toEqual([...best.faces].sort());
      for (const plan of [best, ...single]) expectSameByHighs(problem, plan);
      if (best.possible) possible += 1;
      else stopped += 1;
    }
    expect(Math.min(possible, stopped)).toBeGreaterThan(10);
  });

  it('name the finished faces that would make a stopped plan possible', () => {
    let named = 0;
    for (const random of manyRandoms(BLOCKS / 4, 5)) {
      const problem = anyProblem(random, { ...ANYTHING, finished: 0.5 });
      const { best, releases } = plansOf(problem);
      const { finished } = problem.part;
      const expected = finished.filter((face) => {
        return volumeByHighs(problem, [...best.faces, face]) !== undefined;
      });
      expect(releases).toEqual(best.possible ? [] : expected);
      named += releases.length;
    }
    expect(named).toBeGreaterThan(10);
  });
});
