import { beforeEach, describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { workOut } from '../../src/state/answers';
import { setKit } from '../../src/state/kits';
import { shop } from '../../src/state/shop';
import { setLevel } from '../../src/state/shop-settings';
import { micro, mm } from '../entry/support/typed';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

const READ = compared('i', '34', '31');

/** The width found for right to bottom, µm. */
function widthOf(...[inspection, now]: Parameters<typeof workOut>): number | undefined {
  const [finding] = workOut(inspection, now).answer?.findings ?? [];
  return finding?.fixed ? finding.zone.width : undefined;
}

describe('an inspection that says something', () => {
  it('says what the core works out: (34 - 31)/(2 · 74) · 90 = 1.824 µm', () => {
    const { part, answer, silence } = workOut(READ, BLOCK);
    expect(part?.block.size).toEqual({ x: 60, y: 40, z: 90 });
    expect(silence).toBeUndefined();
    expect(answer?.findings).toHaveLength(2);
    expect(widthOf(READ, BLOCK)).toBeCloseTo((3 / 148) * 90, 9);
    expect(widthOf(READ, BLOCK)?.toFixed(3)).toBe('1.824');
  });

  it('may still have readings to come', () => {
    const { problems, answer } = workOut(compared('i', '34', ''), BLOCK);
    expect(problems.get(fieldKey.placing('on left'))?.kind).toBe('missing');
    expect(answer?.findings.map(({ fixed }) => fixed)).toEqual([false, false]);
  });

  it('gives its verdict at the level of the shop', async () => {
    const verdict = () => {
      const [finding] = workOut(READ, { ...BLOCK, requirements: [line] }).answer?.findings ?? [];
      return finding?.fixed ? finding.verdict : undefined;
    };
    const line = { ...BLOCK.requirements[0]!, tolerance: micro('2.5') };
    setLevel('60');
    expect(verdict()).toBe('in');
    setLevel('99,9');
    expect(verdict()).toBe('too close to call');
    await saving('saved');
  });
});

describe('an inspection says nothing', () => {
  const silent = (...asked: Parameters<typeof workOut>) => {
    const { answer, silence } = workOut(...asked);
    return [answer, silence];
  };

  it('while the part is not described, or something in it is wrong', () => {
    const size = { ...BLOCK.size, x: mm('') };
    const requirements = [{ ...BLOCK.requirements[0]!, tolerance: micro('0') }];
    expect(silent(READ, { ...BLOCK, size })).toEqual([undefined, 'part']);
    expect(silent(READ, { ...BLOCK, requirements })).toEqual([undefined, 'part']);
  });

  it.each(['3x', '6000', '1600'])('while a reading is wrong: %s', (left) => {
    const worked = workOut(compared('i', '34', left), BLOCK);
    expect(worked.answer).toBeUndefined();
    expect(worked.silence).toBe('wrong');
    expect(worked.problems.get(fieldKey.placing('on left'))?.kind).toBe('wrong');
    expect(worked.part).toBeDefined();
  });

  it('while the kit is wrong or the level makes no sense', async () => {
    const { kit } = shop.value;
    setKit({ ...kit, plate: micro('') });
    expect(silent(READ, BLOCK)).toEqual([undefined, 'kit']);
    setKit(kit);
    for (const level of ['50', '100', '', '9x']) {
      setLevel(level);
      expect(silent(READ, BLOCK)).toEqual([undefined, 'kit']);
    }
    await saving('saved');
  });

  it('while nothing is read', () => {
    expect(silent({ ...READ, setups: [] }, BLOCK)).toEqual([undefined, 'nothing read']);
    const unread = compared('i', '', '').setups.slice(0, 1);
    expect(silent({ ...READ, setups: unread }, BLOCK)).toEqual([undefined, 'nothing read']);
  });
});

describe('an inspection that is closed', () => {
  const closed = { at: '2024-03-05T15:00:00.000Z', part: BLOCK, kit: shop.value.kit };

  it('keeps the part that it was closed with, an open one takes that of now', () => {
    const now = { ...BLOCK, size: { ...BLOCK.size, z: mm('180') } };
    expect(widthOf({ ...READ, closed }, now)).toBeCloseTo((3 / 148) * 90, 9);
    expect(widthOf(READ, now)).toBeCloseTo((3 / 148) * 180, 9);
    expect(
      workOut({ ...READ, closed }, { ...BLOCK, requirements: [] }).answer?.findings,
    ).toHaveLength(2);
  });

  it('keeps the kit that it was closed with, an open one takes that of now', async () => {
    const doubt = (inspection: typeof READ) => {
      return workOut(inspection, BLOCK).answer?.sides[0]?.outOfSquare[0]?.standard;
    };
    const before = doubt(READ);
    setKit({ ...shop.value.kit, seating: micro('20') });
    expect(doubt({ ...READ, closed })).toBe(before);
    expect(doubt(READ)).toBeGreaterThan(before ?? Number.POSITIVE_INFINITY);
    setKit({ ...shop.value.kit, seating: micro('x') });
    expect(doubt({ ...READ, closed })).toBe(before);
    expect(workOut(READ, BLOCK).silence).toBe('kit');
    await saving('saved');
  });
});
