import type { Block } from '../part/block';
import { type Axis, axesInFace, FACE_PAIRS, FACES, type Face } from '../part/faces';
import type { Reading } from '../readings/reading';
import { type Touch, touchesOf } from './touches';

/** Where a crown could be that the readings would show, and what it would do to them. */
export interface CrownShape {
  readonly face: Face;
  /** The face by itself, or it and its opposite together, which a micrometer cannot tell apart. */
  readonly of: 'face' | 'thickness';
  /** The axis along which the middle stands out over the ends. */
  readonly along: Axis;
  /** The length from end to end of the places read, mm. */
  readonly span: number;
  /** True where a column that is bowed itself would look the same. */
  readonly byColumn: boolean;
  /** What a crown of 1 µm adds to each reading that it touches, µm, by id. */
  readonly effects: ReadonlyMap<string, number>;
}

/** Fewer places along an axis than these show no bow. */
const PLACES = 3;

/** Over the middle half of its length a crown has at least this part of its height. */
const IN_MIDDLE_HALF = 0.75;

/**
 * Every crown that a traverse up a side, or a grid, was read closely enough to show: at three places
 * along an axis, one of them in the middle half. It touches all readings of the face, also those that
 * would not show it by themselves.
 */
export function crownShapes(readings: readonly Reading[], block: Block): readonly CrownShape[] {
  const touched = (among: readonly Reading[], face: Face, along: Axis) =>
    among
      .map((reading) => ({ reading, touches: touchesOf(reading, face, along, block) }))
      .filter(({ touches }) => touches.length > 0);
  const thicknesses = readings.filter(({ kind }) => kind === 'micrometer');
  return [
    ...FACES.flatMap((face) =>
      axesInFace(face).flatMap((along) =>
        crownOver(touched(readings, face, along), ['column', 'over the top']).map(
          (crown): CrownShape => ({ face, of: 'face', along, ...crown }),
        ),
      ),
    ),
    ...FACE_PAIRS.flatMap(([face]) =>
      axesInFace(face).flatMap((along) =>
        crownOver(touched(thicknesses, face, along), ['micrometer']).map(
          (crown): CrownShape => ({ face, of: 'thickness', along, ...crown }),
        ),
      ),
    ),
  ];
}

interface Touched {
  readonly reading: Reading;
  readonly touches: readonly Touch[];
}

/** The crown over all the places touched; none where no traverse or grid of the kinds in `by` shows it. */
function crownOver(
  touched: readonly Touched[],
  by: readonly Reading['kind'][],
): readonly Pick<CrownShape, 'span' | 'byColumn' | 'effects'>[] {
  const places = touched.flatMap(({ touches }) => touches.map(({ at }) => at));
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const span = high - low;
  // 1 in the middle and 0 at the ends: the rise of a bow, as the answers on form have it.
  const heightAt = (at: number) => 1 - ((2 * at - low - high) / span) ** 2;
  const isShown = placesByMap(touched.filter(({ reading }) => by.includes(reading.kind))).some(
    (map) => map.size >= PLACES && [...map].some((at) => heightAt(at) >= IN_MIDDLE_HALF),
  );
  if (!isShown) return [];
  const effects = touched.map(({ reading, touches }) => {
    const effect = touches.reduce((sum, { at, sign }) => sum + sign * heightAt(at), 0);
    return [reading.id, effect] as const;
  });
  const byColumn = touched.some(({ reading }) => reading.kind === 'column');
  return [{ span, byColumn, effects: new Map(effects) }];
}

/** The places of each traverse and grid, by itself; all micrometer readings over a face are one grid. */
function placesByMap(touched: readonly Touched[]): readonly ReadonlySet<number>[] {
  const maps = new Map<string, Set<number>>();
  for (const { reading, touches } of touched) {
    const name = 'placing' in reading ? `at ${reading.placing}` : reading.kind;
    const places = maps.get(name) ?? new Set();
    maps.set(name, places);
    for (const { at } of touches) places.add(at);
  }
  return [...maps.values()];
}
