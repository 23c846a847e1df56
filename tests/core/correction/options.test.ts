import { describe, expect, it } from 'vitest';
import { correctingSlopes } from '../../../src/core/correction/correcting-slopes';
import { correctionOptions } from '../../../src/core/correction/options';
import type { Face } from '../../../src/core/part/faces';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import type { Zone } from '../../../src/core/zones/zone';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { BLOCK, partWith, requirement } from '../support/worked-block';
import { doubleZone, simpleZone } from '../support/zones';

const SQUARE = requirement('right', 'bottom', 5);
const PARALLEL = requirement('right', 'left', 5);

function optionsFor(one: typeof SQUARE, zone: Zone, finished: readonly Face[] = []) {
  const target = { requirement: one, zone };
  const part = partWith([SQUARE, PARALLEL], finished);
  return correctionOptions(target, [target], part, DEFAULT_LEVEL);
}

describe('the corrections of two tapers at once: growing 4 µm going back, 4.5 µm going up', () => {
  const options = optionsFor(PARALLEL, doubleZone([4, 4.5], [0.5, 0.5]));

  it.each(['right', 'left'] as const)(
    'take both off the %s face, its upper back corner being high',
    (face) => {
      const option = known(options.find((one) => one.face === face));
      expect(option.highSide).toEqual(['back', 'top']);
      expectClose(option.wedge, 8.5);
      expectClose(option.volume, (4.25 * 40 * 90) / 1000);
      // µm at each corner: the two tapers, one of them, the other, none.
      const removals = Object.fromEntries(
        option.corners.map(({ towards, removal }) => [towards.join(' '), removal]),
      );
      expectClose(removals['back top'], 8.5);
      expectClose(removals['back bottom'], 4);
      expectClose(removals['front top'], 4.5);
      expectClose(removals['front bottom'], 0);
      expectClose(option.effects[0]?.after.width, 0);
      expect(option.effects[0]?.verdict).toBe('in');
    },
  );

  it('name the other corner where the tapers run the other way', () => {
    const [option] = optionsFor(PARALLEL, doubleZone([4, -4.5], [0.5, 0.5]));
    expect(option?.highSide).toEqual(['back', 'bottom']);
  });

  it('name an edge, not a corner, where rounding is all there is of the other taper', () => {
    const [option] = optionsFor(PARALLEL, doubleZone([1e-16, 4.5], [0.5, 0.5]));
    expect(option?.highSide).toEqual(['top']);
  });
});

describe('the order of the corrections', () => {
  // 10 µm over the 90 mm of the right face: the bottom takes less stock.
  const lean = simpleZone(10, 0.5);
  const faces = (finished: readonly Face[]) =>
    optionsFor(SQUARE, lean, finished).map((option) => [option.face, option.finished]);

  it('is least stock first', () => {
    expect(faces([])).toEqual([
      ['bottom', false],
      ['right', false],
    ]);
  });

  it('puts finished faces last, whatever the stock', () => {
    expect(faces(['bottom'])).toEqual([
      ['right', false],
      ['bottom', true],
    ]);
    expect(faces(['right'])).toEqual([
      ['bottom', false],
      ['right', true],
    ]);
    expect(faces(['right', 'bottom'])).toEqual([
      ['bottom', true],
      ['right', true],
    ]);
  });
});

describe('the sense of a correction', () => {
  it.each([
    // Face, datum, worked face, lean outward, high edge.
    ['right', 'bottom', 'bottom', 10, 'left'],
    ['right', 'bottom', 'right', 10, 'top'],
    ['right', 'bottom', 'bottom', -10, 'right'],
    ['right', 'bottom', 'right', -10, 'bottom'],
    ['front', 'top', 'top', 10, 'back'],
    ['front', 'top', 'front', 10, 'bottom'],
    ['top', 'left', 'left', 10, 'bottom'],
    ['top', 'left', 'top', 10, 'right'],
  ] as const)(
    'of %s to %s on the %s, leaning %d µm: high %s',
    (face, datum, worked, lean, high) => {
      const options = optionsFor(requirement(face, datum), simpleZone(lean, 0.5));
      expect(options.find((option) => option.face === worked)?.highSide).toEqual([high]);
    },
  );

  it('is refused on a face that the requirement does not speak of', () => {
    const zone = simpleZone(10, 0.5);
    expect(() => correctingSlopes(SQUARE, 'back', zone, BLOCK)).toThrow(RangeError);
  });
});

describe('what needs no correction', () => {
  it.each([0, 1e-15])('is an error of %d µm', (error) => {
    expect(optionsFor(SQUARE, simpleZone(error, 0.5))).toEqual([]);
    expect(optionsFor(PARALLEL, doubleZone([error, -error], [0.5, 0.5]))).toEqual([]);
  });
});
