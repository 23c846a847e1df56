import { describe, expect, it } from 'vitest';
import type { CorrectionOption } from '../../../src/core/correction/options';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { micrometer, nose } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

/*
 * The block 60 × 40 × 90 of the worked cases, right 34 and left 31 µm over a lever of 74 mm, the
 * sides measured to be parallel, top and bottom too: right is obtuse to the bottom by
 * e = 3/148 µm/mm, left acute by as much.
 *
 * Work the bottom: it has to be turned by e about the y axis. Right leans out at the top, so the
 * block is to lean to the left: the LEFT edge of the bottom comes off by e·60, the right edge not
 * at all. Work the right face: its TOP edge comes off by e·90.
 */

const e = 3 / 148;
const REQUIREMENTS = [
  requirement('right', 'bottom', 3),
  requirement('left', 'bottom', 3),
  requirement('right', 'left', 3),
  requirement('top', 'bottom', 3),
];

function corrections() {
  const flat = (face: 'right' | 'top', places: readonly { x?: number; y?: number; z?: number }[]) =>
    places.map((place) => micrometer(face, place, 0));
  const readings = [
    nose('right', 34),
    nose('left', 31),
    ...flat('right', [{ y: -15, z: -40 }, { y: 15, z: -40 }, { z: 40 }]),
    ...flat('top', [{ x: -25, y: -15 }, { x: -25, y: 15 }, { x: 25 }]),
  ];
  return inspect(partWith(REQUIREMENTS), readings, DEFAULT_KIT, DEFAULT_LEVEL).corrections;
}

function working(face: string): CorrectionOption {
  return known(corrections()[0]?.find((option) => option.face === face));
}

/** Zone of another requirement before and after, µm. */
function zones(option: CorrectionOption, id: string): readonly [number, number] {
  const effect = known(option.effects.find((other) => other.requirement.id === id));
  return [effect.before.width, effect.after.width];
}

describe('working the bottom', () => {
  const option = working('bottom');

  it('takes e·60 = 1.216 µm off the left edge and nothing off the right', () => {
    expect(option.highSide).toEqual(['left']);
    expectClose(option.wedge, e * 60, { relative: 1e-9 });
    expect(option.wedge.toFixed(3)).toBe('1.216');
    for (const { towards, removal } of option.corners) {
      expectClose(removal, towards.includes('left') ? e * 60 : 0, { absolute: 1e-12 });
    }
  });

  it('presses a third of the length in from the left edge: 10 mm from the middle', () => {
    expectClose(option.pressPoint.x, -10, { relative: 1e-9 });
    expectClose(option.pressPoint.y, 0, { absolute: 1e-9 });
  });

  it('takes half the wedge times the face: 60·40·(e·60/2) µm', () => {
    expectClose(option.volume, (60 * 40 * e * 30) / 1000, { relative: 1e-9 });
  });

  it('makes right square, puts left right too and tapers the block to the top by the same wedge', () => {
    expectClose(zones(option, 'right to bottom')[1], 0, { absolute: 1e-12 });
    expectClose(zones(option, 'left to bottom')[1], 0, { absolute: 1e-12 });
    expectClose(zones(option, 'top to bottom')[1], e * 60, { relative: 1e-9 });
    expectClose(zones(option, 'right to left')[1], 0, { absolute: 1e-12 });
  });
});

describe('working the right face', () => {
  const option = working('right');

  it('takes e·90 = 1.824 µm off the top edge and nothing off the bottom', () => {
    expect(option.highSide).toEqual(['top']);
    expectClose(option.wedge, e * 90, { relative: 1e-9 });
    expect(option.wedge.toFixed(3)).toBe('1.824');
    for (const { towards, removal } of option.corners) {
      expectClose(removal, towards.includes('top') ? e * 90 : 0, { absolute: 1e-12 });
    }
  });

  it('presses a third of the height in from the top edge: 15 mm from the middle', () => {
    expectClose(option.pressPoint.z, 15, { relative: 1e-9 });
    expectClose(option.pressPoint.y, 0, { absolute: 1e-9 });
  });

  it('leaves left as it was and tapers right to left by the same wedge', () => {
    const [before, after] = zones(option, 'left to bottom');
    expectClose(before, e * 90, { relative: 1e-9 });
    expectClose(after, e * 90, { relative: 1e-9 });
    expectClose(zones(option, 'right to left')[1], e * 90, { relative: 1e-9 });
    expectClose(zones(option, 'top to bottom')[1], 0, { absolute: 1e-12 });
  });
});

describe('the order of the ways', () => {
  it('is least stock first: the bottom takes 40·60²·e/2, the right face 40·90²·e/2', () => {
    expect(corrections()[0]?.map((option) => option.face)).toEqual(['bottom', 'right']);
  });

  it('leaves a block that is as it should be alone', () => {
    const [, , parallel] = corrections();
    expect(parallel).toEqual([]);
  });
});
