import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CorrectionOption } from '../../../src/core/correction/options';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { PART, someReadings } from '../support/inspections';
import { known } from '../support/known';
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
const MEASURED_PART = partWith(
  [
    requirement('right', 'bottom'),
    requirement('back', 'bottom', 3),
    requirement('right', 'left', 6),
  ],
  ['bottom'],
);

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
    const corrections = (
      part = MEASURED_PART,
      readings: Parameters<typeof inspect>[1] = READINGS,
    ) => inspect(part, readings, DEFAULT_KIT, DEFAULT_LEVEL).corrections;
    const before = corrections();
    const after = corrections(
      turnedPart(rotation, MEASURED_PART),
      READINGS.map((reading) => turnedReading(rotation, reading)),
    );
    expect(before.map((options) => options.length)).toEqual([2, 2, 2]);
    expect(after).toHaveLength(3);
    before.forEach((options, index) => {
      for (const option of options) {
        const face = turnedFace(rotation, option.face);
        const same = known(after[index]!.find((other) => other.face === face));
        expectTurned(rotation, option, same);
      }
    });
  });
});

function expectTurned(rotation: Rotation, before: CorrectionOption, after: CorrectionOption) {
  const near = { absolute: 1e-9, relative: 1e-9 };
  const faces = (all: readonly CorrectionOption['face'][]) => [...all].sort();
  expect(after.finished).toBe(before.finished);
  expect(faces(after.highSide)).toEqual(
    faces(before.highSide.map((face) => turnedFace(rotation, face))),
  );
  expectClose(after.wedge, before.wedge, near);
  expectClose(after.volume, before.volume, near);
  for (const what of [
    (one: CorrectionOption) => one.removal.slopes,
    (one: CorrectionOption) => one.pressPoint,
  ]) {
    const expected = turned(rotation, what(before));
    for (const axis of ['x', 'y', 'z'] as const) {
      expectClose(what(after)[axis] ?? 0, expected[axis] ?? 0, near);
    }
  }
  for (const corner of before.corners) {
    const towards = faces(corner.towards.map((face) => turnedFace(rotation, face)));
    const same = after.corners.find((other) => faces(other.towards).join() === towards.join());
    expectClose(same?.removal, corner.removal, near);
  }
  before.effects.forEach((effect, index) => {
    expectClose(after.effects[index]?.after.width, effect.after.width, near);
    expect(after.effects[index]?.verdict).toBe(effect.verdict);
  });
}
