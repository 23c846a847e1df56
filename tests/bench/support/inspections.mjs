// @ts-check
/** Inspections of 60 readings each, with invented values: how long they take hangs on their places. */
import { load } from './measure.mjs';

/** @type {typeof import('../../core/support/readings')} */
const { micrometer, nose, traverse } = await load('./tests/core/support/readings.ts');
/** @type {typeof import('../../core/support/random')} */
const { randomFrom } = await load('./tests/core/support/random.ts');
/** @type {typeof import('../../core/support/worked-block')} */
const { partWith, requirement } = await load('./tests/core/support/worked-block.ts');

/** @typedef {import('../../../src/core/readings/reading').Reading} Reading */
/** @typedef {import('../../../src/core/part/faces').Face} Face */

const random = randomFrom(60);
const some = () => Math.round(random.between(-20, 20));

/** `count` places from `from` to `to`, mm. @param {number} count @param {number} from @param {number} to */
const places = (count, from, to) =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** The same places or heights once more, the block seated again. @param {number} times @param {() => readonly Reading[]} read */
const seatings = (times, read) =>
  Array.from({ length: times }, (_, time) =>
    read().map((reading) => ({
      ...reading,
      id: `${reading.id}, seating ${time}`,
      ...('placing' in reading && { placing: `${reading.placing}, seating ${time}` }),
    })),
  ).flat();

/** @param {readonly [Face, Face]} pair @param {Face} base */
const swing = (pair, base) => {
  const [low, high] = base === 'bottom' ? [6, 80] : [4, 50];
  return pair.map((face) => nose(face, some(), { setting: `on ${base}`, base, low, high }));
};

/** @param {Face} face @param {readonly number[]} heights */
const slide = (face, heights) =>
  traverse(face, Object.fromEntries(heights.map((height) => [height, some()])));

/** @param {number} along @param {number} across @returns {readonly Reading[]} */
const overTop = (along, across) =>
  places(along, -25, 25).flatMap((x) =>
    places(across, -15, 15).map((y) => ({
      kind: /** @type {const} */ ('over the top'),
      id: `top at ${x} ${y}`,
      placing: 'top',
      face: /** @type {const} */ ('top'),
      point: { x, y, z: 0 },
      value: some(),
    })),
  );

export const MIXED = {
  part: partWith([
    requirement('right', 'bottom'),
    requirement('left', 'bottom'),
    requirement('back', 'bottom'),
    requirement('top', 'bottom'),
    requirement('right', 'left'),
  ]),
  readings: [
    ...seatings(3, () => swing(['right', 'left'], 'bottom')),
    ...seatings(3, () => swing(['back', 'front'], 'bottom')),
    ...seatings(2, () => swing(['top', 'bottom'], 'left')),
    ...seatings(2, () => [...slide('right', [10, 45, 80]), ...slide('left', [10, 45, 80])]),
    ...[...slide('back', [10, 45, 80]), ...slide('front', [10, 45, 80])],
    ...places(4, -40, 40).flatMap((z) =>
      [-15, 15].map((y) => micrometer('right', { y, z }, some())),
    ),
    ...places(3, -40, 40).flatMap((z) =>
      [-25, 25].map((x) => micrometer('back', { x, z }, some())),
    ),
    ...overTop(4, 3),
  ],
};

/** The zone of a squareness, its form read up a column. */
export const TRAVERSES = {
  part: partWith([requirement('right', 'bottom', 20)]),
  readings: [
    ...seatings(3, () => slide('right', places(18, 5, 85))),
    ...slide('left', [10, 45, 80]),
    ...places(3, -40, 40).map((z) => micrometer('right', { z }, some())),
  ],
};

/** The zone of a parallelism, its form read over a grid. */
export const GRID = {
  part: partWith([requirement('top', 'bottom', 20)]),
  readings: overTop(10, 6),
};
