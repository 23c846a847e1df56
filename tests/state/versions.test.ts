import { beforeEach, describe, expect, it, vi } from 'vitest';
import { chain, latestInspection, openChain } from '../../src/state/chain';
import { closeInspection, reopenInspection } from '../../src/state/inspections';
import { changeSetups, leaveOut, putBack } from '../../src/state/plate-changes';
import { versions, versionsOf } from '../../src/state/versions';
import type { InspectionRecord } from '../../src/store/records';
import { loadVersions, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { saving, startAfresh } from './support/fresh';
import { failOnceAt } from './support/full-disk';
import { BLOCK, compared } from './support/inspections';

beforeEach(async () => {
  await startAfresh();
  await save([compared('i', '34', '31')]);
  await openChain('p');
});

const latest = () => latestInspection(chain.value?.links ?? []) as InspectionRecord;

/** Some time goes by, and then it is done. */
function later(what: () => void): void {
  vi.setSystemTime(Date.now() + 60_000);
  what();
}

describe('finished readings that are opened again', () => {
  it('stay in full as an earlier version, with when and why, however often', async () => {
    later(() => closeInspection(latest(), BLOCK));
    const first = latest();
    later(() => reopenInspection(latest(), '34 was typed for 43'));
    later(() => changeSetups(latest(), () => [noseSetup({ right: '43', left: '31' })]));
    later(() => closeInspection(latest(), BLOCK));
    const second = latest();
    later(() => reopenInspection(latest(), 'The plate was dirty'));
    later(() => changeSetups(latest(), () => []));
    expect(versionsOf(latest())).toMatchObject([
      { record: first, why: '34 was typed for 43', made: '2024-03-05T14:09:00.000Z' },
      { record: second, why: 'The plate was dirty', made: '2024-03-05T14:12:00.000Z' },
    ]);
    await saving('saved');
    expect((await loadVersions('p')).records).toEqual(versions.value);
  });

  it('are there again when the part is opened the next time, and not with another part', async () => {
    later(() => closeInspection(latest(), BLOCK));
    later(() => reopenInspection(latest(), 'A slip'));
    const kept = versions.value;
    await saving('saved');
    await openChain('q');
    expect(versions.value).toEqual([]);
    await openChain('p');
    expect(versions.value).toEqual(kept);
    expect(kept).toHaveLength(1);
  });

  it('are kept in one transaction with what takes their place', async () => {
    later(() => closeInspection(latest(), BLOCK));
    await saving('saved');
    failOnceAt('i');
    later(() => reopenInspection(latest(), 'A slip'));
    await saving('not saved');
    expect((await loadVersions('p')).records).toEqual([]);
  });

  it('and are still open make no version', () => {
    const before = latest();
    reopenInspection(before, 'A slip');
    expect(latest()).toBe(before);
    expect(versions.value).toEqual([]);
  });
});

it('finished readings cannot be changed otherwise', async () => {
  later(() => closeInspection(latest(), BLOCK));
  const finished = latest();
  changeSetups(finished, () => []);
  leaveOut(finished, 'on right', 'A chip');
  putBack(finished, 'on right');
  expect(latest()).toBe(finished);
  await saving('saved');
});
