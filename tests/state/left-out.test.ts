import { beforeEach, describe, expect, it } from 'vitest';
import { workOut } from '../../src/state/answers';
import { chain, openChain } from '../../src/state/chain';
import { changeSetups, leaveOut, putBack } from '../../src/state/plate-changes';
import type { InspectionRecord } from '../../src/store/records';
import { loadChain, save } from '../../src/store/shop-store';
import { micro } from '../entry/support/typed';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

/** The right side read twice, the second time 40 µm high. */
const READ: InspectionRecord = (() => {
  const [nose, word] = compared('i', '34', '31').setups;
  if (nose?.kind !== 'nose comparator' || word === undefined) throw new Error('Other setups');
  const slip = { id: 'slip', face: 'right', reading: micro('74') } as const;
  return {
    ...compared('i', '34', '31'),
    setups: [{ ...nose, placings: [...nose.placings, slip] }, word],
  };
})();

beforeEach(async () => {
  await startAfresh();
  await save([READ]);
  await openChain('p');
});

function now(): InspectionRecord {
  const link = chain.value?.links.find(({ id }) => id === 'i');
  if (link?.kind !== 'inspection') throw new Error('The inspection is gone');
  return link;
}

function said() {
  const { answer } = workOut(now(), BLOCK);
  const [finding] = answer?.findings ?? [];
  return {
    width: finding?.fixed ? finding.zone.width : undefined,
    suspects: answer?.suspects.map(({ reading }) => reading),
    checked: answer?.checks.map(({ reading }) => reading),
  };
}

describe('a reading that is left out', () => {
  it('no longer counts: (34 - 31)/(2 · 74) · 90 = 1.824 µm, as if it had not been read', async () => {
    expect(said().suspects).toContain('slip');
    expect(said().width).toBeGreaterThan(5);
    leaveOut(now(), 'slip', 'A chip under the part');
    expect(said()).toEqual({
      width: expect.closeTo((3 / 148) * 90, 9),
      suspects: [],
      checked: ['on right', 'on left', 'word', 'word'],
    });
    await saving('saved');
  });

  it('stays on record with when and why, and so it is stored', async () => {
    leaveOut(now(), 'slip', 'A chip under the part');
    await saving('saved');
    const { records } = await loadChain('p');
    expect(records).toEqual([now()]);
    expect(now().setups).toEqual(READ.setups);
    expect(now().leftOut).toEqual({
      slip: { at: expect.stringMatching(/^\d{4}-\d\d-\d\dT.*Z$/), why: 'A chip under the part' },
    });
  });

  it('stays left out while the rest is typed', async () => {
    leaveOut(now(), 'slip', 'A chip under the part');
    changeSetups(now(), (setups) => setups);
    expect(Object.keys(now().leftOut ?? {})).toEqual(['slip']);
    await saving('saved');
  });

  it('is one of several, each with its own reason', async () => {
    leaveOut(now(), 'slip', 'A chip');
    leaveOut(now(), 'on left', 'Misread');
    expect(Object.entries(now().leftOut ?? {}).map(([id, { why }]) => [id, why])).toEqual([
      ['slip', 'A chip'],
      ['on left', 'Misread'],
    ]);
    expect(said().width).toBeUndefined();
    putBack(now(), 'on left');
    expect(said().width).toBeCloseTo((3 / 148) * 90, 9);
    await saving('saved');
  });
});

describe('a reading that is put back', () => {
  it('counts as before, and that is stored too', async () => {
    const before = said();
    leaveOut(now(), 'slip', 'A chip under the part');
    expect(said()).not.toEqual(before);
    putBack(now(), 'slip');
    expect(said()).toEqual(before);
    await saving('saved');
    const [stored] = (await loadChain('p')).records;
    expect(stored).toEqual({ ...READ, leftOut: {} });
  });
});
