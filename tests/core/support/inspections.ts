import fc from 'fast-check';
import {
  axesInFace,
  FACE_PAIRS,
  FACES,
  oppositeFace,
  pairsAround,
} from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import type { Reading } from '../../../src/core/readings/reading';
import { assumedParallel, micrometer, nose, traverse } from './readings';
import { partWith, requirement } from './worked-block';

/** Any reading at all, of whole µm: two settings, two columns, every face on every base. */
const value = fc.integer({ min: -40, max: 40 });
const base = fc.constantFrom(...FACES);
const faceOn = base.chain((on) =>
  fc.constantFrom(...pairsAround(on).flat()).map((face) => [face, on] as const),
);

const swing = fc
  .tuple(faceOn, fc.constantFrom('long', 'short'), value, value)
  .map(([[face, on], setting, first, second]): readonly Reading[] => {
    const place = { setting, base: on, low: 5, high: setting === 'long' ? 35 : 25 };
    return [nose(face, first, place), nose(oppositeFace(face), second, place)];
  });

const sweep = fc
  .tuple(faceOn, fc.constantFrom('old', 'new'), fc.array(value, { minLength: 6, maxLength: 6 }))
  .map(([[face, on], column, shown]): readonly Reading[] =>
    [face, oppositeFace(face)].flatMap((side, index) => {
      const [low, middle, high] = shown.slice(3 * index);
      const place = { column, base: on };
      return traverse(side, { 5: low!, 17: middle!, 35: high! }, place);
    }),
  );

const thickness = fc
  .tuple(
    fc.constantFrom(...FACES),
    fc.array(fc.tuple(fc.constantFrom(-15, 0, 15), fc.constantFrom(-15, 5, 15), value), {
      minLength: 1,
      maxLength: 5,
    }),
  )
  .map(([face, places]): readonly Reading[] => {
    const [u, v] = axesInFace(face);
    return places.map(([atU, atV, departure]) =>
      micrometer(face, { [u]: atU, [v]: atV }, departure),
    );
  });

const assumption = fc
  .constantFrom(...FACES)
  .map((face): readonly Reading[] => [assumedParallel(face, 2)]);

/** A handful of pieces of work, each of one to six readings; none twice the same. */
export const someReadings: fc.Arbitrary<readonly Reading[]> = fc
  .array(fc.oneof(swing, sweep, thickness, assumption), { minLength: 1, maxLength: 5 })
  .map((work) => [...new Map(work.flat().map((reading) => [reading.id, reading])).values()]);

/** A part with requirements on some edges, its datum face up and down, and on all pairs of faces. */
export const PART: Part = partWith([
  requirement('right', 'bottom'),
  requirement('back', 'bottom', 3),
  requirement('left', 'top', 20),
  requirement('front', 'right', 6),
  ...FACE_PAIRS.map(([face, opposite]) => requirement(face, opposite)),
]);
