import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan, PlanStep } from '../../../src/core/correction/plan/plan';
import type { Face } from '../../../src/core/part/faces';
import { adviceOn, planOn } from '../support/advised';
import { expectClose } from '../support/close';
import { PART, someReadings } from '../support/inspections';
import { micrometer, nose } from '../support/readings';
import {
  ROTATIONS,
  type Rotation,
  turned,
  turnedFace,
  turnedPart,
  turnedReading,
} from '../support/rotations';
import { expectSameSaid, type Said, saidOfPart } from '../support/said';
import { partWith, requirement } from '../support/worked-block';

const NEAR = { absolute: 1e-9, relative: 1e-9 };

/** `said`, with the faces in its names turned. */
function turnedNames(rotation: Rotation, said: Said): Said {
  const face = /\b(right|left|back|front|top|bottom)\b/g;
  return new Map(
    [...said].map(([name, value]) => [
      name.startsWith('taper') || / on /.test(name)
        ? name.replace(face, (one) => turnedFace(rotation, one as 'top'))
        : name,
      value,
    ]),
  );
}

/** A block out of square and out of parallel every way, all of it measured. */
const READINGS = [
  nose('right', 34),
  nose('left', 21),
  nose('back', -12, { setting: 'other' }),
  nose('front', 3, { setting: 'other' }),
  ...[
    [-15, -40, 1],
    [15, -40, 3],
    [-15, 40, 8],
    [15, 40, 9],
  ].map(([y, z, departure]) => micrometer('right', { y: y!, z: z! }, departure!)),
  ...[
    [-25, -40, 4],
    [25, -40, -3],
    [-25, 40, 2],
  ].map(([x, z, departure]) => micrometer('back', { x: x!, z: z! }, departure!)),
];
const PAIRS = [
  ['right', 'bottom'],
  ['back', 'bottom'],
  ['right', 'left'],
] as const;

/** A part of which only one pair is asked to come nearer than it is: each of its two faces will do. */
function partAsking(pair: (typeof PAIRS)[number]) {
  return partWith(PAIRS.map((one) => requirement(one[0], one[1], one === pair ? 6 : 1000)));
}

describe('a block turned over, its faces renamed with it', { timeout: 60_000 }, () => {
  it('can be put down in 24 ways', () => {
    expect(new Set(ROTATIONS.map((rotation) => JSON.stringify(rotation))).size).toBe(24);
  });

  it('is said to be of the same shape', () => {
    fc.assert(
      fc.property(someReadings, fc.constantFrom(...ROTATIONS), (readings, rotation) => {
        const renamed = readings.map((reading) => turnedReading(rotation, reading));
        expectSameSaid(
          saidOfPart(turnedPart(rotation, PART), renamed),
          turnedNames(rotation, saidOfPart(PART, readings)),
        );
      }),
    );
  });

  it.each(ROTATIONS)('gets the same corrections on the same faces: rotation %#', (rotation) => {
    for (const pair of PAIRS) {
      const part = partAsking(pair);
      const before = adviceOn(part, READINGS).plans;
      const after = adviceOn(
        turnedPart(rotation, part),
        READINGS.map((reading) => turnedReading(rotation, reading)),
      ).plans;
      expect(after.single).toHaveLength(6);
      expectClose(after.best.volume, before.best.volume, NEAR);
      for (const face of pair) {
        const plan = planOn(before, face);
        expect(plan).toMatchObject({ possible: true, steps: [{ face }] });
        expectTurned(rotation, plan, planOn(after, turnedFace(rotation, face)));
      }
    }
  });
});

function expectTurned(rotation: Rotation, before: Plan, after: Plan) {
  expect(after.possible).toBe(true);
  expect(after.steps).toHaveLength(1);
  expectTurnedStep(rotation, before.steps[0]!, after.steps[0]!);
  before.effects.forEach((effect, index) => {
    expectClose(after.effects[index]?.after.width, effect.after.width, NEAR);
    expectClose(after.effects[index]?.guard, effect.guard, NEAR);
    expect(after.effects[index]?.verdict).toBe(effect.verdict);
  });
}

function expectTurnedStep(rotation: Rotation, before: PlanStep, after: PlanStep) {
  const faces = (all: readonly Face[]) => [...all].sort();
  expect(faces(after.highSide)).toEqual(
    faces(before.highSide.map((face) => turnedFace(rotation, face))),
  );
  expectClose(after.wedge, before.wedge, NEAR);
  expectClose(after.volume, before.volume, NEAR);
  for (const what of [(one: PlanStep) => one.removal.slopes, (one: PlanStep) => one.pressPoint]) {
    const expected = turned(rotation, what(before));
    for (const axis of ['x', 'y', 'z'] as const) {
      expectClose(what(after)[axis] ?? 0, expected[axis] ?? 0, NEAR);
    }
  }
  for (const corner of before.corners) {
    const towards = faces(corner.towards.map((face) => turnedFace(rotation, face)));
    const same = after.corners.find((other) => faces(other.towards).join() === towards.join());
    expectClose(same?.removal, corner.removal, NEAR);
  }
}
