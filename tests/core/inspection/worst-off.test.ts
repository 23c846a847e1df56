import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AnyFinding, AnyFixedFinding } from '../../../src/core/inspection/any-finding';
import { worstOff } from '../../../src/core/inspection/worst-off';

/** A finding with all that its rank hangs on. */
function fixed(id: string, probability: number, width: number, tolerance = 10): AnyFinding {
  const requirement = { id, face: 'right', datum: 'bottom', tolerance };
  return { fixed: true, requirement, probability, zone: { width } } as unknown as AnyFinding;
}

const NOT_FIXED = { fixed: false, requirement: { id: 'open' } } as unknown as AnyFinding;

const idOf = (finding: AnyFixedFinding | undefined) => finding?.requirement.id;

describe('the line of the drawing that is worst off', () => {
  it('is the one least likely to be met, however little of its tolerance it uses', () => {
    const found = worstOff([fixed('wide', 0.9, 9), fixed('unlikely', 0.2, 1), fixed('sure', 1, 9)]);
    expect(idOf(found)).toBe('unlikely');
  });

  it('is among those as likely the one with most of its tolerance used up', () => {
    const found = worstOff([fixed('wider', 1, 8, 20), fixed('tighter', 1, 6, 10)]);
    expect(idOf(found)).toBe('tighter');
  });

  it('is none that the readings do not fix', () => {
    expect(worstOff([])).toBeUndefined();
    expect(worstOff([NOT_FIXED])).toBeUndefined();
    expect(idOf(worstOff([NOT_FIXED, fixed('read', 1, 0)]))).toBe('read');
  });

  it('does not hang on the order of the drawing, and leaves that as it is', () => {
    const share = fc.integer({ min: 0, max: 20 });
    const findings = fc
      .uniqueArray(fc.tuple(share, share), { selector: String, minLength: 1, maxLength: 8 })
      .map((all) => all.map(([chance, width]) => fixed(`${chance} ${width}`, chance / 20, width)));
    fc.assert(
      fc.property(
        findings.chain((all) =>
          fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
        ),
        ([all, shuffled]) => {
          const before = [...shuffled];
          expect(idOf(worstOff(shuffled))).toBe(idOf(worstOff(all)));
          expect(shuffled).toEqual(before);
        },
      ),
    );
  });
});
