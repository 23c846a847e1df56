import { describe, expect, it } from 'vitest';
import type { PlannedSize, Stop } from '../../src/core/correction/plan/plan';
import { cornersOf } from '../../src/core/part/block';
import { faceTowards } from '../../src/core/part/faces';
import {
  listed,
  planName,
  releasesInWords,
  shortOfAimInWords,
  sizeLeftInWords,
  stopInWords,
  volumeInWords,
} from '../../src/words/plans';
import { known } from '../core/support/known';
import { requirement } from '../core/support/worked-block';
import { PART, workedPlan, workedStep } from './support/worked';

const { block } = PART;
const METRIC = { size: 'mm', deviation: 'µm' } as const;
const INCH = { size: 'in', deviation: 'tenths' } as const;

describe('names in a row', () => {
  it.each([
    [[], ''],
    [['right'], 'right'],
    [['right', 'left'], 'right and left'],
    [['right', 'left', 'top'], 'right, left and top'],
  ])('%j are %j', (names, words) => {
    expect(listed(names)).toBe(words);
  });
});

describe('a plan', () => {
  it('is named by the faces to work, in their order', () => {
    expect(planName(workedPlan('bottom'))).toBe('Work the bottom');
    const steps = [workedStep('right'), workedStep('bottom')];
    expect(planName({ steps })).toBe('Work the right and the bottom');
    expect(planName({ steps: [{ ...steps[0]!, face: 'top' }, ...steps] })).toBe(
      'Work the top, the right and the bottom',
    );
  });

  it.each([
    [40 * 60 * 60 * (3 / 148) * 0.0005, '1.46 mm³'],
    [0.012345, '0.0123 mm³'],
    [12, '12 mm³'],
    [123.45, '123 mm³'],
    [1234.5, '1230 mm³'],
    [0, '0 mm³'],
  ])('takes %d mm³ of stock, to three figures: %s', (volume, words) => {
    expect(volumeInWords(volume, 'mm')).toBe(words);
  });

  it.each([
    [25.4 ** 3, '1 in³'],
    [10 * 25.4 ** 3, '10 in³'],
    // 2.5 × 1.5 in, a wedge of 2 tenths over the whole length: half of it comes off.
    [63.5 * 38.1 * 0.00254, '0.000375 in³'],
    [0.00025, '0.0000000153 in³'],
    [0, '0 in³'],
  ])('takes %d mm³ of stock, as an inch shop says it: %s', (volume, words) => {
    expect(volumeInWords(volume, 'in')).toBe(words);
  });
});

describe('what stops a plan', () => {
  const said = (stop: Stop, units: Parameters<typeof stopInWords>[2] = METRIC) =>
    stopInWords(stop, block.size, units);
  const short = { kind: 'size', axis: 'z', shortfall: 0.7162, before: 0 } as const;

  it('is a size that the cut would make too small, by its name on the drawing', () => {
    expect(said(short)).toBe('0.72 µm short on the 90 mm size (Z)');
    expect(said({ ...short, axis: 'x' }, INCH)).toBe('0.28 tenths short on the 2.3622 in size (X)');
    expect(said({ ...short, axis: 'y' })).toBe('0.72 µm short on the 40 mm size (Y)');
  });

  it('is a size that is too small as it is, of which the cut may add', () => {
    expect(said({ ...short, before: 0.5 })).toBe(
      '0.72 µm short on the 90 mm size (Z), 0.50 µm of it already',
    );
  });

  it('is a requirement that no cut from these faces brings so far', () => {
    const over = { kind: 'requirement', requirement: requirement('right', 'left') } as const;
    expect(said({ ...over, excess: 1.824 })).toBe(
      'Right parallel to left stays 1.82 µm over what it is to come to',
    );
    expect(said({ ...over, excess: 2.54 }, INCH)).toContain(' stays 1.00 tenths over ');
  });
});

describe('a requirement that cannot be brought so far as asked', () => {
  const effect = known(workedPlan('bottom').effects[0]);

  it('for its doubt is to be read again first', () => {
    expect(shortOfAimInWords(effect)).toBe(
      'Right square to bottom: the doubt of the readings alone takes up the share of the tolerance. Read again before anything comes off.',
    );
  });

  it('for its form is to be flattened first', () => {
    expect(shortOfAimInWords({ ...effect, doubtAlone: false, formAlone: true })).toBe(
      'Right square to bottom: the face is out of flat by more than the share of the tolerance. A plane cut does not mend that: flatten it first.',
    );
  });

  it('is not spoken of where it can', () => {
    expect(shortOfAimInWords({ ...effect, doubtAlone: false })).toBeUndefined();
  });
});

describe('a size after a plan', () => {
  /** A size with `after` µm left at its corners of which `comesOff` came off; each a number for all four or one for each. */
  const sizeAfter = (
    axis: PlannedSize['axis'],
    comesOff: readonly number[],
    after: readonly number[] | undefined,
    limits: PlannedSize['limits'] = {},
  ): PlannedSize => ({
    ...{ axis, limits, known: after !== undefined },
    corners: cornersOf(block, faceTowards(axis, 1)).map((corner, index) => ({
      ...corner,
      comesOff: comesOff[index]!,
      before: after && after[index]! + comesOff[index]!,
      after: after?.[index],
      guard: 0.3,
      short: 0,
      over: Math.max(0, (after?.[index] ?? 0) - (limits.upper ?? Number.POSITIVE_INFINITY)),
    })),
  });

  it('tells the most that comes off and the least that is left, each wherever it is', () => {
    const size = sizeAfter('x', [0, 0, 1.216, 1.216], [-2.4, -2, -1.5, -1], { lower: -10 });
    expect(sizeLeftInWords(size, 60, METRIC)).toBe(
      'X, 60 mm: loses up to 1.22 µm; −2.40 µm from nominal is left where it is least, −10.00 µm allowed',
    );
    expect(sizeLeftInWords(size, 60, INCH)).toBe(
      'X, 2.3622 in: loses up to 0.48 tenths; −0.94 tenths from nominal is left where it is least, −3.94 tenths allowed',
    );
  });

  it('says nothing of a limit that there is not', () => {
    const size = sizeAfter('y', [0, 0, 1, 1], [3, 3, 2, 2]);
    expect(sizeLeftInWords(size, 40, METRIC)).toBe(
      'Y, 40 mm: loses up to 1.00 µm; 2.00 µm from nominal is left where it is least',
    );
  });

  it('tells where it is too large and stays so', () => {
    const size = sizeAfter('z', [0, 0, 1, 1], [3, 3, 2, 2], { lower: -5, upper: 1 });
    expect(sizeLeftInWords(size, 90, METRIC)).toMatch(
      /, −5\.00 µm allowed; it stays 2\.00 µm over its upper limit$/,
    );
    const within = sizeAfter('z', [0, 0, 1, 1], [3, 3, 2, 2], { lower: -5, upper: 3 });
    expect(sizeLeftInWords(within, 90, METRIC)).toMatch(/, −5\.00 µm allowed$/);
  });

  it('is not made up where it has not been measured', () => {
    const size = sizeAfter('z', [0, 0, 1.216, 1.216], undefined, { lower: -5 });
    expect(sizeLeftInWords(size, 90, METRIC)).toBe(
      'Z, 90 mm: loses up to 1.22 µm; the size itself has not been measured at three places or more',
    );
  });

  it('is that of the plan: working the bottom the height loses 1.216 µm, the width nothing', () => {
    const [x, , z] = workedPlan('bottom').sizes;
    expect(sizeLeftInWords(known(x), 60, METRIC)).toMatch(/^X, 60 mm: loses up to 0\.00 µm; /);
    expect(sizeLeftInWords(known(z), 90, METRIC)).toMatch(/^Z, 90 mm: loses up to 1\.22 µm; /);
  });
});

describe('the faces that would have to be freed', () => {
  it.each([
    [['bottom'], 'the bottom'],
    [['right', 'bottom'], 'the right or the bottom'],
    [['right', 'left', 'bottom'], 'the right, the left or the bottom'],
  ] as const)('%j: any one of them', (faces, words) => {
    expect(releasesInWords(faces)).toBe(`It could be done if ${words} were not marked finished.`);
  });
});
