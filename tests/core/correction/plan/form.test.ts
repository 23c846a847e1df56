import { describe, expect, it } from 'vitest';
import type { MeasuredRequirement } from '../../../../src/core/correction/plan/plan';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import type { Zone } from '../../../../src/core/zones/zone';
import { type FormPoint, widthWithForm } from '../../../../src/core/zones/zone-with-form';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { manyRandoms } from '../../support/random';
import { partWith, requirement } from '../../support/worked-block';
import { doubleZone, simpleZone } from '../../support/zones';
import { NO_SIZES, someForm } from './support/problems';

const SQUARE = requirement('right', 'bottom', 10);
const PARALLEL = requirement('right', 'left', 10);
const HALF = { level: 0.95, share: 0.5 };

function bestFor(measured: MeasuredRequirement) {
  const { best } = plansFor(partWith([measured.requirement]), [measured], NO_SIZES, HALF);
  return { best, effect: known(best.effects[0]) };
}

function point(share: number, residual: number, standard = 0): FormPoint {
  return { shares: [share], residual, group: 'up the face', standard };
}

/** Width of `zone` with `points`, the parts put at `values`. */
function widthAt(values: readonly number[], points: readonly FormPoint[]): number {
  return widthWithForm(values, points);
}

describe('a requirement with form', { timeout: 60_000 }, () => {
  it('is planned by its width with form: 2 µm of hollow in the middle leave 2 less for the lean', () => {
    // Ends at ±p/2, the hollow at -2 in the middle: it counts once p/2 is less than 2.
    const hollow = [point(0, -2)];
    const { best, effect } = bestFor({
      ...{ requirement: SQUARE, zone: simpleZone(8, 0), formPoints: hollow },
    });
    expect(best.possible).toBe(true);
    expectClose(effect.withForm.before, 8);
    expectClose(effect.withForm.after, 5);
    expect(effect).toMatchObject({ doubtAlone: false, formAlone: false });
    // A hollow of 4: p/2 + 4 = 5 at p = 2.
    const deep = bestFor({
      ...{ requirement: SQUARE, zone: simpleZone(8, 0), formPoints: [point(0, -4)] },
    });
    expectClose(deep.effect.after.width, 2);
    expectClose(deep.effect.withForm.after, 5);
  });

  it('that takes up the share whatever the lean is brought to the least width', () => {
    // A crown of 6 in the middle: 6 + p/2 is least at p = 0.
    const { best, effect } = bestFor({
      ...{ requirement: SQUARE, zone: simpleZone(8, 0.1), formPoints: [point(0, 6)] },
    });
    expect(best.possible).toBe(true);
    expect(effect).toMatchObject({ formAlone: true, doubtAlone: false });
    expectClose(effect.withForm.after, 6);
    expect(effect.verdict).toBe('in');
  });

  it('within the share by itself but not with its doubt is told as doubt', () => {
    const { best, effect } = bestFor({
      ...{ requirement: SQUARE, zone: simpleZone(8, 0.1), formPoints: [point(0, 4.9, 0.5)] },
    });
    expect(best.possible).toBe(true);
    expect(effect).toMatchObject({ formAlone: false, doubtAlone: true });
  });

  it('can have its least width where the lean is not 0', () => {
    // The plane passes 3 over the face's point at the top end: leaning by 3 takes it up.
    const points = [point(0.5, 3), point(-0.5, -3)];
    const { effect } = bestFor({
      ...{ requirement: { ...SQUARE, tolerance: 4 }, zone: simpleZone(8, 0), formPoints: points },
    });
    expect(effect.formAlone).toBe(true);
    const least = Math.min(
      ...Array.from({ length: 2001 }, (_, n) => widthAt([(n - 1000) / 100], points)),
    );
    expectClose(effect.withForm.after, least, { absolute: 1e-9 });
    expectClose(effect.after.parts[0]?.value, -3, { absolute: 1e-9 });
  });

  it('comes out at the share or at the least width there is, for any form', () => {
    let [atShare, atLeast] = [0, 0];
    const zones: readonly (readonly [typeof SQUARE, Zone])[] = [
      [SQUARE, simpleZone(9, 0)],
      [PARALLEL, doubleZone([7, -5], [0, 0])],
    ];
    for (const random of manyRandoms(100)) {
      for (const [one, zone] of zones) {
        const formPoints = someForm(random, zone.parts.length).map((of) => ({
          ...of,
          residual: of.residual * 3,
          standard: 0,
        }));
        const { best, effect } = bestFor({ requirement: one, zone, formPoints });
        const values = effect.after.parts.map(({ value }) => value);
        expect(best.possible).toBe(true);
        expect(effect.withForm.after).toBe(widthAt(values, formPoints));
        if (effect.formAlone) {
          atLeast += 1;
          expect(effect.withForm.after).toBeGreaterThan(5);
          const others = Array.from({ length: 200 }, () =>
            widthAt(
              values.map(() => random.between(-10, 10)),
              formPoints,
            ),
          );
          expect(Math.min(...others)).toBeGreaterThan(effect.withForm.after - 1e-9);
        } else {
          if (best.steps.length > 0) atShare += 1;
          expectClose(effect.withForm.after, best.steps.length > 0 ? 5 : effect.withForm.before, {
            absolute: 1e-9,
          });
        }
      }
    }
    expect(Math.min(atShare, atLeast)).toBeGreaterThan(20);
  });
});

describe('the verdict to expect of a requirement with form', () => {
  it('is of the tolerance less what form adds to the width', () => {
    // p = 2 after the cut, and the hollow makes 3 more of it: 10 - 3 is left for p.
    const { effect } = bestFor({
      ...{ requirement: SQUARE, zone: simpleZone(8, 0), formPoints: [point(0, -4)] },
    });
    expect(effect.verdict).toBe('in');
    const crown = (height: number) =>
      bestFor({
        ...{ requirement: SQUARE, zone: simpleZone(8, 0), formPoints: [point(0, height)] },
      }).effect.verdict;
    expect([crown(9.9), crown(10.1), crown(30)]).toEqual(['in', 'out', 'out']);
  });
});
