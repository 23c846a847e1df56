import { describe, expect, it } from 'vitest';
import {
  chooseMethod,
  type FaceWork,
  isAgainst,
  type MethodReason,
} from '../../src/core/correction/method/choose-method';
import { METHODS, USUAL_FINISHES } from '../../src/core/correction/method/usual-finish';
import type { Removal } from '../../src/core/correction/removal';
import { pressedBeyond } from '../../src/core/correction/setting/beyond-kern';
import { cutDepths } from '../../src/core/correction/setting/cut-depths';
import { presentRises } from '../../src/core/correction/setting/present-rise';
import { shimsFor } from '../../src/core/correction/setting/shims';
import type { LengthUnit } from '../../src/core/units/length';
import {
  beyondKernInWords,
  choiceInWords,
  depthInWords,
  METHOD_ORDERS,
  reasonInWords,
  setUpInWords,
  shimsInWords,
} from '../../src/words/methods';
import { BLOCK } from '../core/support/worked-block';
import { workedStep } from './support/worked';

const METRIC = { size: 'mm', deviation: 'µm' } as const;
const INCH = { size: 'in', deviation: 'tenths' } as const;

/** The reason in both systems of units, and whether it speaks against. */
function said(reason: MethodReason) {
  return [reasonInWords(reason, METRIC), reasonInWords(reason, INCH), isAgainst(reason)];
}

describe('how much is to come off', () => {
  // 12.7, 25.4 and 50.8 µm are 5, 10 and 20 tenths.
  it('is no more than the shop takes that way', () => {
    const amount = { kind: 'amount', asked: 12.7, limit: 25.4, fits: true } as const;
    expect(said(amount)).toEqual([
      'The amount is no more than your limit of 25.40 µm.',
      'The amount is no more than your limit of 10.00 tenths.',
      false,
    ]);
  });

  it('is more than that', () => {
    const amount = { kind: 'amount', asked: 50.8, limit: 25.4, fits: false } as const;
    expect(said(amount)).toEqual([
      '50.80 µm is more than your limit of 25.40 µm.',
      '20.00 tenths is more than your limit of 10.00 tenths.',
      true,
    ]);
  });
});

describe('how large the face is', () => {
  // A square of 101.6 mm, which is 4 in, is 10 322.56 mm².
  it('is no more than a hand can press, told as the side of a square', () => {
    const area = { kind: 'area', asked: 2400, limit: 10_322.56, fits: true } as const;
    expect(said(area)).toEqual([
      'The face is no larger than 101.6 mm square, your limit for a hand.',
      'The face is no larger than 4 in square, your limit for a hand.',
      false,
    ]);
  });

  it('is more than that', () => {
    const area = { kind: 'area', asked: 15_000, limit: 10_000, fits: false } as const;
    expect(said(area)).toEqual([
      'The face is larger than 100 mm square, your limit for a hand.',
      'The face is larger than 3.937 in square, your limit for a hand.',
      true,
    ]);
  });
});

describe('whether a magnetic chuck holds the material', () => {
  it('is told where it does', () => {
    const held = 'A magnetic chuck holds this material.';
    const chuck = { kind: 'chuck', material: 'tool steel O1', holds: true } as const;
    expect(said(chuck)).toEqual([held, held, false]);
  });

  it('is told where it does not, with what does', () => {
    const loose =
      'A magnetic chuck does not hold this material: it takes a vice, an angle plate or a vacuum.';
    const chuck = { kind: 'chuck', material: 'granite', holds: false } as const;
    expect(said(chuck)).toEqual([loose, loose, true]);
  });
});

describe('the finish', () => {
  // 1 µin is 0.0254 µm: 0.1, 0.2, 0.8 and 1.6 µm are 3.9, 7.9, 31.5 and 63 µin.
  const finish = (required: number, fits: boolean, usuallyLapped = false): MethodReason => ({
    ...{ kind: 'finish', usual: USUAL_FINISHES.grind, required },
    ...{ fits, usuallyLapped },
  });

  it('is within what the way usually leaves', () => {
    expect(said(finish(0.8, true))).toEqual([
      'It usually leaves Ra 0.1 µm to 1.6 µm, and 0.8 µm is asked for.',
      'It usually leaves Ra 4 µin to 63 µin, and 31 µin is asked for.',
      false,
    ]);
  });

  it('can be had that way, but is one that the trade laps', () => {
    expect(said(finish(0.2, true, true))).toEqual([
      'It usually leaves Ra 0.1 µm to 1.6 µm, but for 0.2 µm the trade would lap.',
      'It usually leaves Ra 4 µin to 63 µin, but for 8 µin the trade would lap.',
      false,
    ]);
  });

  it('is finer than the way usually leaves', () => {
    expect(said(finish(0.05, false))).toEqual([
      'It usually leaves Ra 0.1 µm to 1.6 µm: the 0.05 µm asked for is finer than that.',
      'It usually leaves Ra 4 µin to 63 µin: the 2 µin asked for is finer than that.',
      true,
    ]);
  });

  it('is told to three figures, as where 16 µin are 0.4064 µm', () => {
    const [metric, inch] = said(finish(16 * 0.0254, true));
    expect(metric).toContain(' and 0.406 µm is asked for.');
    expect(inch).toContain(' and 16 µin is asked for.');
  });
});

describe('what is not known', () => {
  it.each([
    [
      'material unknown',
      'What the material is, and so whether a magnetic chuck holds it, is not known.',
    ],
    ['finish unknown', 'The drawing’s finish has not been put in, so it says nothing here.'],
  ] as const)('is told and speaks against nothing: %s', (kind, words) => {
    expect(said({ kind })).toEqual([words, words, false]);
  });
});

describe('the way that is chosen', () => {
  const choice = { reasons: [] } as const;

  it.each([
    ['lap', 'Lap it by hand'],
    ['grind', 'Grind it'],
    ['machine', 'Machine it again'],
  ] as const)('is an order, to %s: %s', (method, words) => {
    expect(METHOD_ORDERS[method]).toBe(words);
    expect(choiceInWords({ ...choice, method, suits: true })).toBe(words);
    expect(choiceInWords({ ...choice, method, suits: false })).toBe(
      `${words}, though something speaks against it`,
    );
  });

  it('suits exactly where none of its reasons speaks against it', () => {
    const wedge: FaceWork = { wedge: 8, mean: 4, area: 2400 };
    const works: readonly FaceWork[] = [
      wedge,
      { ...wedge, material: 'granite', roughness: 0.8 },
      { ...wedge, wedge: 800, mean: 400, material: 'tool steel O1', roughness: 0.05 },
      { ...wedge, area: 15_000, roughness: 0.2 },
    ];
    const choices = works.flatMap((work) => chooseMethod(work));
    for (const { suits, reasons } of choices) expect(reasons.some(isAgainst)).toBe(!suits);
    // Each way is here both where it suits and where it does not.
    const seen = new Set(choices.map(({ method, suits }) => `${method} ${suits}`));
    expect(seen.size).toBe(2 * METHODS.length);
  });
});

/** 6 µm off the left edge of the top, 60 mm long, and nothing off the right. */
const LEFT: Removal = { face: 'top', mean: 3, slopes: { x: -0.1 } };
/** Off the right, 40 × 90 mm: 0.05 · 40 = 2 µm more at the back, 0.1 · 90 = 9 µm more at the bottom. */
const CORNER: Removal = { face: 'right', mean: 5.5, slopes: { y: 0.05, z: -0.1 } };

describe('how the face must indicate before it is cut level', () => {
  const setUp = (removal: Removal, unit: LengthUnit) =>
    setUpInWords(removal.face, presentRises(BLOCK, removal), unit);

  it('is a rise from the low edge to the high one', () => {
    expect(setUp(LEFT, 'µm')).toBe(
      'Set it so that an indicator run over the top itself rises by 6.00 µm from the right edge to the left edge; then cut level.',
    );
    // 6/2.54
    expect(setUp(LEFT, 'tenths')).toContain(' rises by 2.36 tenths from the right edge to ');
  });

  it('is two rises where a corner is high', () => {
    expect(setUp(CORNER, 'µm')).toBe(
      'Set it so that an indicator run over the right itself rises by 2.00 µm from the front edge to the back edge and by 9.00 µm from the top edge to the bottom edge; then cut level.',
    );
    expect(setUp(CORNER, 'tenths')).toMatch(/ by 0\.79 tenths from .* and by 3\.54 tenths from /);
  });

  it('is what the plan takes off: 60 · 3/148 = 1.216 µm at the left edge of the bottom', () => {
    expect(setUp(workedStep('bottom').removal, 'µm')).toBe(
      'Set it so that an indicator run over the bottom itself rises by 1.22 µm from the right edge to the left edge; then cut level.',
    );
  });
});

describe('the shim that this takes', () => {
  const shims = (removal: Removal, tapers: Parameters<typeof shimsFor>[2], unit: LengthUnit) =>
    shimsInWords(shimsFor(BLOCK, removal, tapers), unit);

  it('goes under one edge of the face that it lies on', () => {
    expect(shims(LEFT, { x: 0, y: 0 }, 'µm')).toBe(
      'Lying on its bottom, that is a shim of 6.00 µm under the left edge. Further in it is thinner in proportion.',
    );
    expect(shims(LEFT, { x: 0, y: 0 }, 'tenths')).toContain(' 2.36 tenths under the left edge. ');
  });

  it('goes under three corners where a corner is to stand high', () => {
    expect(shims(CORNER, { y: 0, z: 0 }, 'µm')).toBe(
      'Lying on its left, that is 9.00 µm under the bottom front corner, 11.00 µm under the bottom back corner and 2.00 µm under the top back corner, and nothing under the fourth. Further in they are thinner in proportion.',
    );
  });

  it('is under the other edge where the block is thinner there: (0.15 - 0.1) · 60 = 3 µm', () => {
    expect(shims(LEFT, { x: -0.15, y: 0 }, 'µm')).toContain(' a shim of 3.00 µm under the right ');
  });

  it('is none where the block already stands so', () => {
    expect(shims(LEFT, { x: -0.1, y: 0 }, 'µm')).toBe(
      'Lying on its bottom it already stands so: no shim.',
    );
  });

  it('is not told where the readings do not fix the taper', () => {
    const unknown =
      'How thick a shim that takes is not known: the readings do not fix the taper to the face it would lie on.';
    expect(shims(LEFT, { x: 0 }, 'µm')).toBe(unknown);
    expect(shims(LEFT, {}, 'tenths')).toBe(unknown);
  });
});

describe('how deep the cut goes', () => {
  const depth = (removal: Removal, unit: LengthUnit) =>
    depthInWords(cutDepths(BLOCK, removal), unit);

  it('is from where the tool touches first to where it cuts all over', () => {
    expect(depth(LEFT, 'µm')).toBe(
      'The tool touches the left edge first; 6.00 µm deeper it has cleaned up.',
    );
    expect(depth(LEFT, 'tenths')).toContain(' first; 2.36 tenths deeper ');
  });

  it('leaves out what comes off all over: 8 µm at the left, 2 µm at the right', () => {
    expect(depth({ ...LEFT, mean: 5 }, 'µm')).toContain(' first; 6.00 µm deeper ');
  });

  it('begins at a corner where one is high: 2 + 9 = 11 µm', () => {
    expect(depth(CORNER, 'µm')).toBe(
      'The tool touches the bottom back corner first; 11.00 µm deeper it has cleaned up.',
    );
  });

  it('is that of the plan: 90 · 3/148 = 1.824 µm from the top edge of the right', () => {
    expect(depth(workedStep('right').removal, 'µm')).toBe(
      'The tool touches the top edge first; 1.82 µm deeper it has cleaned up.',
    );
  });
});

describe('pressing further out than advised', () => {
  // A wedge off the bottom is pressed 20 mm from its left edge, 10 mm off the middle.
  const beyond = (share: number, unit: 'mm' | 'in') => {
    const { pressPoint } = workedStep('bottom');
    const { further, contact } = pressedBeyond(BLOCK, 'bottom', pressPoint, share);
    return beyondKernInWords(further, contact, unit);
  };

  it('by a quarter of those 20 mm keeps 3 · (30 - 15) = 45 of 60 mm down', () => {
    expect(beyond(1 / 4, 'mm')).toBe(
      'Press no further out: 5 mm further, and only 75\u00a0% of the face stays down, the other edge lifts and the high one rounds.',
    );
    expect(beyond(1 / 4, 'in')).toContain(': 0.2 in further, and only 75\u00a0% of ');
  });

  it('by a third of them keeps 3 · (30 - 16.67) = 40 of 60 mm down, both rounded for a hand', () => {
    expect(beyond(1 / 3, 'mm')).toContain(': 6.7 mm further, and only 67\u00a0% of the face ');
    expect(beyond(1 / 3, 'in')).toContain(': 0.26 in further, and only 67\u00a0% of the face ');
  });
});
