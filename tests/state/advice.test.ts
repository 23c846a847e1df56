import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { advise } from '../../src/core/inspection/advise';
import { usualMethodLimits } from '../../src/entry/method-limits';
import { adviceOn, SHARE_RANGE, share, typedShare } from '../../src/state/advice';
import { workOut } from '../../src/state/answers';
import { learnAnew, takeBackLearningAnew } from '../../src/state/begun-anew';
import { openShop } from '../../src/state/open-shop';
import { shop } from '../../src/state/shop';
import { methodLimits, setLevel, setMethodLimits, setShare } from '../../src/state/shop-settings';
import { expectClose } from '../core/support/close';
import { known } from '../core/support/known';
import { inch, micro, mm } from '../entry/support/typed';
import { storedAt } from '../store/support/database';
import { shop as shopRecord } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);
// Nothing is left on its way to the disk for the next test.
afterEach(async () => {
  vi.useRealTimers();
  await saving('saved');
});

describe('how much of each tolerance a plan may leave', () => {
  it('is half of it until something is typed', () => {
    expect(shop.value).not.toHaveProperty('share');
    expect(typedShare.value).toBe('50');
    expect(share.value).toBe(0.5);
  });

  it.each([
    ['5', 0.05],
    ['33,3', 0.333],
    [' 80 ', 0.8],
    ['100', 1],
  ])('is read from what is typed: %j per cent is %d', (text, value) => {
    setShare(text);
    expect(typedShare.value).toBe(text);
    expect(share.value).toBeCloseTo(value, 12);
  });

  it.each(['', '4.9', '0', '-50', '100.1', '50 %', 'half'])(
    'is none where %j is typed, which stays as it is',
    (text) => {
      setShare(text);
      expect(share.value).toBeUndefined();
      expect(typedShare.value).toBe(text);
    },
  );

  it('is read as far as the screen says', () => {
    const shares = [SHARE_RANGE.least, SHARE_RANGE.most].map((text) => {
      setShare(String(text));
      return share.value;
    });
    expect(shares).toEqual([0.05, 1]);
  });
});

// Out of square by (60 - 5)/(2 · 74) · 90 = 33.45 µm, each side by as much, within 5 µm.
const READ = compared('i', '60', '5');

/** The one step of the best plan for what was read. */
/** What is advised, however it is worked out. */
function said(advice: ReturnType<typeof adviceOn>) {
  const { next, plans } = known(advice);
  return { next, plans };
}

function bestStep() {
  return known(adviceOn(workOut(READ, BLOCK))?.plans?.best.steps[0]);
}

describe('the advice on an inspection', () => {
  it('is that of the core at the level and the share of the shop', () => {
    setLevel('90');
    setShare('80');
    const { part, answer } = workOut(READ, BLOCK);
    const advice = advise(known(part), known(answer), { level: 0.9, share: 0.8 });
    expect(said(adviceOn(workOut(READ, BLOCK)))).toEqual(said(advice));
    expect(advice.next).toBeDefined();
  });

  it('is worked out once, whoever asks', () => {
    const worked = workOut(READ, BLOCK);
    const advice = known(adviceOn(worked));
    expect(adviceOn(worked)).toBe(advice);
    expect(adviceOn(workOut(READ, BLOCK))).toBe(advice);
    // The same readings in an answer of its own, as where form has been taken in.
    expect(adviceOn({ ...worked, answer: { ...known(worked.answer) } })).toBe(advice);
  });

  it('is worked out once, too, where the same share is typed otherwise', () => {
    const advice = known(adviceOn(workOut(READ, BLOCK)));
    setShare('50,0');
    expect(adviceOn(workOut(READ, BLOCK))).toBe(advice);
  });

  it('is another where another share is asked for', () => {
    const half = known(adviceOn(workOut(READ, BLOCK)));
    const before = bestStep();
    setShare('80');
    const most = known(adviceOn(workOut(READ, BLOCK)));
    expect(most).not.toBe(half);
    const allowed = [half, most].map(({ plans }) => plans?.best.effects.map((one) => one.allowed));
    expect(allowed).toEqual([
      [2.5, 2.5],
      [4, 4],
    ]);
    // 1.5 µm more over a height of 90 mm may stay: over the 60 mm of the bottom 1 µm.
    expect([before.face, bestStep().face]).toEqual(['bottom', 'bottom']);
    expectClose(before.wedge - bestStep().wedge, 1, { absolute: 1e-9 });
    setShare('50');
    expect(said(adviceOn(workOut(READ, BLOCK)))).toEqual(said(half));
  });

  it('is another at another level: it is surer, so more comes off', () => {
    const worked = workOut(READ, BLOCK);
    const before = known(adviceOn(worked)?.plans?.best.steps[0]);
    setLevel('99');
    expect(bestStep().wedge).toBeGreaterThan(before.wedge + 0.1);
    // So it is of the same answer, held from before.
    const held = known(adviceOn(worked)).plans?.best.steps[0];
    expectClose(held?.wedge, bestStep().wedge, { absolute: 1e-9 });
  });

  it('is another for other readings', () => {
    const half = adviceOn(workOut(READ, BLOCK));
    const less = known(adviceOn(workOut(compared('i', '50', '5'), BLOCK)));
    expect(less).not.toBe(half);
    const before = [known(half), less].map(({ plans }) => plans?.best.effects[0]?.before.width);
    expectClose(before[0], (55 / 148) * 90, { absolute: 1e-9 });
    expectClose(before[1], (45 / 148) * 90, { absolute: 1e-9 });
  });
});

describe('nothing is advised', () => {
  it.each(['', '4.9', '100.1', 'x'])(
    'on what to take off while the share is %j, and all is there again after',
    (text) => {
      const advice = known(adviceOn(workOut(READ, BLOCK)));
      setShare(text);
      // What to read next does not hang on the share.
      const meanwhile = known(adviceOn(workOut(READ, BLOCK)));
      expect(meanwhile).toEqual({ next: advice.next, plans: undefined, pieces: [] });
      setShare('50');
      expect(said(adviceOn(workOut(READ, BLOCK)))).toEqual(said(advice));
    },
  );

  it('while the level is none', () => {
    const worked = workOut(READ, BLOCK);
    expect(adviceOn(worked)).toBeDefined();
    setLevel('x');
    expect(adviceOn(worked)).toBeUndefined();
  });

  it('where the inspection says nothing, or the part is not described', () => {
    const unread = workOut({ ...READ, setups: [] }, BLOCK);
    expect(unread.silence).toBe('nothing read');
    expect(adviceOn(unread)).toBeUndefined();
    const undescribed = workOut(READ, { ...BLOCK, size: { ...BLOCK.size, x: mm('') } });
    expect(undescribed.silence).toBe('part');
    expect(adviceOn(undescribed)).toBeUndefined();
  });
});

/** The shop as the next start of the app finds it. */
async function reopened() {
  await saving('saved');
  expect(await storedAt('shop')).toEqual(shop.value);
  shop.value = shopRecord('77');
  await openShop();
  return shop.value;
}

describe('what a shop settles about correcting is kept', () => {
  beforeEach(openShop);

  it('the share, as typed, even where it is none', async () => {
    setShare('80');
    expect(await reopened()).toMatchObject({ level: '95', share: '80' });
    setShare('8o');
    expect(await reopened()).toMatchObject({ share: '8o' });
  });

  it('the lines between the ways of working, as typed with their units', async () => {
    expect(methodLimits.value).toEqual(usualMethodLimits());
    const typed = { mostLapped: micro('30'), mostGround: mm('0.x'), lappedSide: inch('4') };
    setMethodLimits(typed);
    expect(methodLimits.value).toEqual(typed);
    expect(await reopened()).toMatchObject({ level: '95', methodLimits: typed });
    expect(methodLimits.value).toEqual(typed);
  });

  it('since when a rate is learned anew, each way by itself and the last time for it', async () => {
    const at = (minute: number) => `2024-03-06T09:0${minute}:00.000Z`;
    const learnAt = (minute: number, way: string) => {
      vi.useFakeTimers({ now: new Date(at(minute)), toFake: ['Date'] });
      learnAnew(way);
    };
    expect(shop.value).not.toHaveProperty('learnedSince');
    learnAt(0, 'brass, lapped');
    learnAt(1, 'steel, lapped');
    learnAt(2, 'brass, lapped');
    const learnedSince = { 'brass, lapped': at(2), 'steel, lapped': at(1) };
    expect(await reopened()).toMatchObject({ level: '95', learnedSince });
  });

  it('that this is taken back, for one way and not for another', async () => {
    learnAnew('brass, lapped');
    learnAnew('steel, lapped');
    const steel = known(shop.value.learnedSince?.['steel, lapped']);
    takeBackLearningAnew('brass, lapped');
    expect((await reopened()).learnedSince).toEqual({ 'steel, lapped': steel });
    takeBackLearningAnew('steel, lapped');
    expect((await reopened()).learnedSince).toEqual({});
  });

  it('taking back what was never begun leaves the others', async () => {
    takeBackLearningAnew('brass, lapped');
    expect(Object.keys(shop.value.learnedSince ?? {})).toEqual([]);
    learnAnew('steel, lapped');
    takeBackLearningAnew('brass, lapped');
    expect(Object.keys((await reopened()).learnedSince ?? {})).toEqual(['steel, lapped']);
  });

  it('each beside the others', async () => {
    const typed = { ...usualMethodLimits(), mostLapped: micro('30') };
    setShare('80');
    setMethodLimits(typed);
    learnAnew('brass, lapped');
    setLevel('90');
    const { learnedSince } = shop.value;
    expect(Object.keys(learnedSince ?? {})).toEqual(['brass, lapped']);
    const kept = { share: '80', methodLimits: typed, learnedSince, level: '90' };
    expect(await reopened()).toMatchObject(kept);
  });
});
