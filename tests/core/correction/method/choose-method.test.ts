import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chooseMethod,
  type FaceWork,
  type MethodReason,
} from '../../../../src/core/correction/method/choose-method';
import { chuckHolds } from '../../../../src/core/correction/method/magnetic-chuck';
import { DEFAULT_METHOD_SETTINGS } from '../../../../src/core/correction/method/method-settings';
import {
  LAPPED_FINISH,
  type Method,
  USUAL_FINISHES,
} from '../../../../src/core/correction/method/usual-finish';
import { EXPANSIONS, type Material } from '../../../../src/core/statistics/expansion-coefficients';
import { known } from '../../support/known';
import { RA_BY_PROCESS } from './reference/process-roughness';

const MATERIALS = Object.keys(EXPANSIONS) as readonly Material[];

/** A feathered wedge of 8 µm on 60 mm × 40 mm of tool steel. */
const WORK: FaceWork = { wedge: 8, mean: 4, area: 2400, material: 'tool steel O1' };

function order(work: FaceWork): readonly (readonly [Method, boolean])[] {
  return chooseMethod(work).map(({ method, suits }) => [method, suits] as const);
}

function reasonFor(method: Method, work: FaceWork, kind: MethodReason['kind']) {
  const choice = known(chooseMethod(work).find((one) => one.method === method));
  return choice.reasons.find((reason) => reason.kind === kind);
}

function feathered(wedge: number): FaceWork {
  return { ...WORK, wedge, mean: wedge / 2 };
}

describe('the usual finishes', () => {
  it('are the published ranges', () => {
    expect(USUAL_FINISHES.lap).toEqual(RA_BY_PROCESS.lapping);
    expect(USUAL_FINISHES.grind).toEqual(RA_BY_PROCESS['surface grinding']);
    expect(USUAL_FINISHES.machine).toEqual([
      RA_BY_PROCESS['boring, turning'][0],
      RA_BY_PROCESS.milling[1],
    ]);
  });

  it('bear out what the trade says: 0.2 µm is lapped, and nothing finer than 0.4 is turned', () => {
    const [finest, coarsest] = RA_BY_PROCESS.lapping;
    expect(LAPPED_FINISH).toBeGreaterThan(finest);
    expect(LAPPED_FINISH).toBeLessThan(coarsest);
    // Finer than anything turned or milled, at the fine end of what is ground.
    expect(LAPPED_FINISH).toBeLessThan(RA_BY_PROCESS['boring, turning'][0]);
    expect(LAPPED_FINISH).toBeLessThan(RA_BY_PROCESS.milling[0]);
    const [finestGround, coarsestGround] = RA_BY_PROCESS['surface grinding'];
    expect(LAPPED_FINISH).toBeLessThan(Math.sqrt(finestGround * coarsestGround));
    expect(USUAL_FINISHES.machine[0]).toBe(0.4);
  });
});

describe('a magnetic chuck', () => {
  it.each([
    'mild steel 1020',
    'steel 1045',
    'alloy steel 4140',
    'tool steel A2',
    'tool steel D2',
    'tool steel O1',
    'stainless steel 416',
    'stainless steel 440C',
    'grey cast iron',
    'ductile iron',
  ] as const)('holds %s', (material) => {
    expect(chuckHolds(material)).toBe(true);
  });

  it.each([
    'aluminium 2024',
    'aluminium 6061',
    'aluminium 7075',
    'cast aluminium 356',
    'stainless steel 304',
    'stainless steel 316',
    'brass C360',
    'bronze C932',
    'copper C110',
    'granite',
  ] as const)('does not hold %s', (material) => {
    expect(chuckHolds(material)).toBe(false);
    expect(reasonFor('grind', { ...WORK, material }, 'chuck')).toEqual({
      kind: 'chuck',
      material,
      holds: false,
    });
  });
});

describe('the way to work', () => {
  it('is by hand for a little, then the grinder, then the mill', () => {
    expect(order(feathered(8))).toEqual([
      ['lap', true],
      ['grind', true],
      ['machine', true],
    ]);
    expect(order(feathered(80))).toEqual([
      ['grind', true],
      ['machine', true],
      ['lap', false],
    ]);
    expect(order(feathered(800))).toEqual([
      ['machine', true],
      ['lap', false],
      ['grind', false],
    ]);
  });

  it('passes the grinder over where its chuck does not hold', () => {
    expect(order({ ...feathered(80), material: 'aluminium 6061' })).toEqual([
      ['machine', true],
      ['lap', false],
      ['grind', false],
    ]);
  });

  it.each([
    ['up to', 20, true],
    ['beyond', 20.1, false],
  ])('is lapping %s the limit of the shop', (_, wedge, suits) => {
    const choice = known(chooseMethod(feathered(wedge)).find(({ method }) => method === 'lap'));
    expect(choice.suits).toBe(suits);
    expect(reasonFor('lap', feathered(wedge), 'amount')).toEqual({
      kind: 'amount',
      asked: wedge,
      limit: 20,
      fits: suits,
    });
  });

  it('counts for lapping what comes off all over, for grinding the deepest', () => {
    // A level cut of 15 µm is as much work as a feathered wedge of 30.
    const level = { ...WORK, wedge: 15, mean: 15 };
    expect(reasonFor('lap', level, 'amount')).toMatchObject({ asked: 30, fits: false });
    expect(reasonFor('grind', level, 'amount')).toMatchObject({ asked: 15, fits: true });
  });

  it('does not lap a face that is too large for a hand', () => {
    const large = { ...WORK, area: 150 * 100 };
    expect(reasonFor('lap', large, 'area')).toEqual({
      kind: 'area',
      asked: 15_000,
      limit: 10_000,
      fits: false,
    });
    expect(order(large)[0]).toEqual(['grind', true]);
  });

  it('follows the finish that is asked for', () => {
    expect(order({ ...WORK, roughness: 0.8 })).toEqual([
      ['lap', true],
      ['grind', true],
      ['machine', true],
    ]);
    expect(order({ ...WORK, roughness: 0.2 })).toEqual([
      ['lap', true],
      ['grind', true],
      ['machine', false],
    ]);
    expect(order({ ...WORK, roughness: 0.08 })).toEqual([
      ['lap', true],
      ['grind', false],
      ['machine', false],
    ]);
    expect(order({ ...WORK, roughness: 0.02 }).some(([, suits]) => suits)).toBe(false);
  });

  it.each([
    ['lap', 0.2, true, false],
    ['grind', 0.3, true, false],
    ['grind', 0.2, true, true],
    ['grind', 0.05, false, false],
    ['machine', 0.4, true, false],
    ['machine', 0.2, false, false],
  ] as const)('says of %s for an Ra of %d: fits %s, usually lapped %s', (...row) => {
    const [method, required, fits, usuallyLapped] = row;
    expect(reasonFor(method, { ...WORK, roughness: required }, 'finish')).toEqual({
      kind: 'finish',
      usual: USUAL_FINISHES[method],
      required,
      fits,
      usuallyLapped,
    });
  });

  it('does not refuse for what is not known, and says what that is', () => {
    const { material: _, ...unknown } = WORK;
    expect(order(unknown).every(([, suits]) => suits)).toBe(true);
    expect(reasonFor('grind', unknown, 'material unknown')).toBeDefined();
    expect(reasonFor('grind', unknown, 'chuck')).toBeUndefined();
    for (const method of ['lap', 'grind', 'machine'] as const) {
      expect(reasonFor(method, unknown, 'finish unknown')).toBeDefined();
      expect(reasonFor(method, unknown, 'finish')).toBeUndefined();
    }
  });

  it('puts first, where nothing suits, what has least against it', () => {
    // Too much and too large to lap, not held; the mill falls short in the finish alone.
    const work = { ...WORK, wedge: 90, mean: 45, area: 20_000, material: 'granite' } as const;
    expect(order({ ...work, roughness: 0.05 })).toEqual([
      ['machine', false],
      ['lap', false],
      ['grind', false],
    ]);
  });

  it('keeps to the settings of the shop', () => {
    const settings = { mostLapped: 5, mostGround: 6, largestLapped: 100 };
    const choices = chooseMethod(WORK, settings);
    expect(choices.map(({ method }) => method)).toEqual(['machine', 'grind', 'lap']);
  });

  it('names each way once, those that suit first, and suits exactly where nothing is against it', () => {
    const work = fc.record(
      {
        wedge: fc.double({ min: 0.1, max: 2000, noNaN: true }),
        share: fc.double({ min: 0, max: 1, noNaN: true }),
        area: fc.double({ min: 1, max: 1e5, noNaN: true }),
        material: fc.constantFrom(...MATERIALS),
        roughness: fc.double({ min: 0.01, max: 10, noNaN: true }),
      },
      { requiredKeys: ['wedge', 'share', 'area'] },
    );
    fc.assert(
      fc.property(work, ({ share, ...some }) => {
        const choices = chooseMethod({ ...some, mean: share * some.wedge });
        expect(choices.map(({ method }) => method).toSorted()).toEqual(['grind', 'lap', 'machine']);
        const suits = choices.map((choice) => choice.suits);
        expect(suits).toEqual(suits.toSorted((a, b) => Number(b) - Number(a)));
        for (const choice of choices) {
          const isAgainst = choice.reasons.some(
            (reason) => ('fits' in reason && !reason.fits) || ('holds' in reason && !reason.holds),
          );
          expect(choice.suits).toBe(!isAgainst);
        }
      }),
    );
  });
});

describe('what is refused', () => {
  it.each([
    { wedge: 0 },
    { wedge: Number.NaN },
    { wedge: Number.POSITIVE_INFINITY },
    { mean: -1 },
    { mean: 9 },
    { mean: Number.NaN },
    { area: 0 },
    { area: Number.NaN },
    { roughness: 0 },
    { roughness: Number.NaN },
  ])('is work with %o', (wrong) => {
    expect(() => chooseMethod({ ...WORK, ...wrong })).toThrow(RangeError);
  });

  it.each(['mostLapped', 'mostGround', 'largestLapped'] as const)('is a %s of nothing', (limit) => {
    for (const none of [0, -1, Number.NaN]) {
      const settings = { ...DEFAULT_METHOD_SETTINGS, [limit]: none };
      expect(() => chooseMethod(WORK, settings)).toThrow(RangeError);
    }
  });
});
