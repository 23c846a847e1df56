import { beforeEach, describe, expect, it } from 'vitest';
import type { PartEntry } from '../../src/entry/part-entry';
import type { Link } from '../../src/state/chain';
import { workOutcome } from '../../src/state/outcomes';
import { shop } from '../../src/state/shop';
import type { InspectionRecord, WorkRecord } from '../../src/store/records';
import { micrometerSetup } from '../entry/support/setups';
import { micro } from '../entry/support/typed';
import { startAfresh } from './support/fresh';
import { BLOCK, compared, workOn } from './support/inspections';

beforeEach(startAfresh);

/*
 * Before, the comparator shows 34 and 31: right leans out by 3/148 µm/mm. After, 33 and 32: by
 * 1/148. So 2/148 µm/mm have gone.
 */
const BEFORE = compared('before', '34', '31');
const AFTER = compared('after', '33', '32');

function outcome(work: WorkRecord, after: InspectionRecord = AFTER, between: readonly Link[] = []) {
  return workOutcome(work, [BEFORE, work, ...between, after], BLOCK);
}

describe('what work has done', () => {
  it('on the bottom is the angle over its 60 mm', () => {
    const done = outcome(workOn('bottom', '20'));
    expect(done?.outcome?.wedge).toBeCloseTo((60 * 2) / 148, 9); // 0.811 µm
    expect(done?.rate?.value).toBeCloseTo((60 * 2) / 148 / 20, 9);
  });

  it('on the right is the angle over its 90 mm', () => {
    const done = outcome(workOn('right', '40'));
    expect(done?.outcome?.wedge).toBeCloseTo((90 * 2) / 148, 9); // 1.216 µm
    expect(done?.rate?.value).toBeCloseTo((90 * 2) / 148 / 40, 9);
  });

  it('is as doubtful as both inspections together, and so is the rate', () => {
    const done = outcome(workOn('bottom', '20'));
    const [right] = done!.changes;
    const doubt = (60 / 90) * Math.hypot(right!.before.zone.standard, right!.after.zone.standard);
    expect(done?.outcome?.standard).toBeCloseTo(doubt, 9);
    expect(done?.rate?.standard).toBeCloseTo(doubt / 20, 9);
    expect(doubt).toBeGreaterThan(0);
  });

  it('shows what was found before and after', () => {
    const done = outcome(workOn('bottom', '20'));
    expect(done?.changes.map(({ before }) => before.requirement.id)).toEqual([
      'right square',
      'left square',
    ]);
    expect(done?.changes[0]?.before.zone.width).toBeCloseTo((90 * 3) / 148, 9);
    expect(done?.changes[0]?.after.zone.width).toBeCloseTo((90 * 1) / 148, 9);
  });

  it('stands beside what was to become of it', () => {
    const done = outcome(workOn('bottom', '20'));
    // 0.02 µm/mm were to go, over the 90 mm of the side; the wedge of it over the 60 mm of the bottom.
    expect(done?.changes[0]?.predicted.width).toBeCloseTo((90 * 3) / 148 - 90 * 0.02, 9);
    expect(done?.advised).toBeCloseTo(60 * 0.02, 9);
  });

  it('is negative where it went the wrong way, and counts on past square', () => {
    const worse = outcome(workOn('bottom', '20'), compared('after', '36', '31'));
    expect(worse?.outcome?.wedge).toBeCloseTo((-60 * 2) / 148, 9);
    const beyond = outcome(workOn('bottom', '20'), compared('after', '31', '33'));
    expect(beyond?.outcome?.wedge).toBeCloseTo((60 * 5) / 148, 9);
  });

  it.each(['', '0', '-5', 'a while'])('gives no rate for an amount of %j', (amount) => {
    const done = outcome(workOn('bottom', amount));
    expect(done?.outcome?.wedge).toBeCloseTo((60 * 2) / 148, 9);
    expect(done?.rate).toBeUndefined();
  });
});

describe('readings that do not fit each other', () => {
  /** The left side read four times, once 40 µm from the others: it is named as the one that does not fit. */
  function wild(id: string, ...typed: [right: string, left: string]): InspectionRecord {
    const one = compared(id, ...typed);
    const [nose, word] = one.setups;
    if (nose?.kind !== 'nose comparator') throw new Error('It is another setup');
    const again = [typed[1], typed[1], '72'].map((text, index) => ({
      ...nose.placings[1]!,
      id: `again ${index}`,
      reading: micro(text),
    }));
    return { ...one, setups: [{ ...nose, placings: [...nose.placings, ...again] }, word!] };
  }

  it('tell no rate, after the work or before it, and the wedge is said to be in doubt', () => {
    const work = workOn('bottom', '20');
    const after = outcome(work, wild('after', '33', '32'));
    const before = workOutcome(work, [wild('before', '34', '31'), work, AFTER], BLOCK);
    for (const done of [after, before]) {
      expect(done).toMatchObject({ inDoubt: true, rate: undefined });
      expect(done?.outcome).toBeDefined();
    }
    expect(outcome(work)?.inDoubt).toBe(false);
  });

  it('tell it again once the one that does not fit is left out', () => {
    const after = {
      ...wild('after', '33', '32'),
      leftOut: { 'again 2': { at: AFTER.made, why: 'A chip' } },
    };
    expect(outcome(workOn('bottom', '20'), after)).toMatchObject({ inDoubt: false });
  });
});

describe('what work has done is not known', () => {
  const work = workOn('bottom', '20');

  it('before it was measured again', () => {
    expect(workOutcome(work, [BEFORE, work], BLOCK)).toBeUndefined();
    expect(outcome(work, compared('after', '33', ''))).toBeUndefined();
  });

  it('where other work came between', () => {
    expect(outcome(work, AFTER, [{ ...work, id: 'more work' }])).toBeUndefined();
  });

  it('where the inspection before it is not there', () => {
    expect(workOutcome(work, [work, AFTER], BLOCK)).toBeUndefined();
  });

  describe('where the line of the drawing has become another one since', () => {
    const [line] = BLOCK.requirements;
    const asking = (face: 'right' | 'left', datum: 'left' | 'bottom'): PartEntry => {
      return { ...BLOCK, requirements: [{ ...line!, face, datum }] };
    };
    const closedWith = (inspection: InspectionRecord, part: PartEntry): InspectionRecord => {
      const closed = { at: '2024-03-05T15:00:00.000Z', part, kit: shop.value.kit };
      return { ...inspection, closed };
    };

    it('about another face', () => {
      const links = [closedWith(BEFORE, BLOCK), work, AFTER];
      expect(workOutcome(work, links, BLOCK)).toBeDefined();
      expect(workOutcome(work, links, asking('left', 'bottom'))).toBeUndefined();
    });

    it('square, which has one slope, where it was parallel, which has two', () => {
      const places = micrometerSetup([
        ['10', '10', '60.001'],
        ['80', '10', '60.002'],
        ['80', '30', '60.004'],
      ]);
      const before = closedWith({ ...BEFORE, setups: [places] }, asking('right', 'left'));
      const onRight = workOn('right', '20');
      expect(workOutcome(onRight, [before, onRight, AFTER], BLOCK)).toBeUndefined();
    });
  });
});

describe('thicknesses that are taken over from before the work', () => {
  const measured = (
    inspection: InspectionRecord,
    thicknesses: readonly [string, string],
    takenOver?: string,
  ) => {
    const setup = micrometerSetup([
      ['10', '', thicknesses[0]],
      ['80', '', thicknesses[1]],
    ]);
    const places = setup.places.map((place) => ({ ...place, ...(takenOver && { takenOver }) }));
    const setups = inspection.setups.filter(({ kind }) => kind === 'nose comparator');
    return { ...inspection, setups: [...setups, { ...setup, places }] };
  };
  const done = (
    thicknesses: readonly [string, string],
    takenOver?: string,
    work = workOn('bottom', '20'),
  ) =>
    workOutcome(
      work,
      [measured(BEFORE, thicknesses), work, measured(AFTER, thicknesses, takenOver)],
      BLOCK,
    );

  it('are told, and what is wrong with one falls out of the wedge', () => {
    const [right, wrong] = [['60', '60'] as const, ['60', '60.004'] as const].map((thicknesses) =>
      done(thicknesses, BEFORE.made),
    );
    expect(right?.takenOver).toBe(true);
    expect(wrong?.outcome?.wedge).toBeCloseTo(right!.outcome!.wedge, 6);
  });

  it('are no matter to a wedge the other way', () => {
    expect(done(['60', '60'], BEFORE.made, workOn('right', '20'))?.takenOver).toBe(false);
  });

  it('are none where the micrometer was read again', () => {
    expect(done(['60', '60'])?.takenOver).toBe(false);
  });
});
