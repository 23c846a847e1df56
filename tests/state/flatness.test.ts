import { beforeEach, describe, expect, it, vi } from 'vitest';
import { allFindings } from '../../src/core/inspection/any-finding';
import type { FixedFlatness } from '../../src/core/inspection/flatness';
import { METHOD } from '../../src/core/inspection/method';
import { WIDE_MAP_DRAWS, wideMapDraws } from '../../src/core/verdict/flatness-conformity';
import type { PartEntry } from '../../src/entry/part-entry';
import { resultsCsv } from '../../src/exchange/csv/results-table';
import { workOut, workOutFlat } from '../../src/state/answers';
import { workOutApart } from '../../src/state/answers-apart';
import { chain } from '../../src/state/chain';
import { compare } from '../../src/state/compare';
import { beginInspection, closeInspection } from '../../src/state/inspections';
import { historiesOf } from '../../src/state/part-history';
import { keepWhatIsSaid } from '../../src/state/said';
import { standingOf } from '../../src/state/settling';
import { merge } from '../../src/store/merge';
import type { InspectionRecord } from '../../src/store/records';
import { overFaceSetup } from '../entry/support/over-face';
import { micro } from '../entry/support/typed';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

const flatWithin = (tolerance: string, id = 'flat'): PartEntry => {
  return { ...BLOCK, flatness: [{ id, face: 'bottom', tolerance: micro(tolerance) }] };
};

/** Both sides compared, and a map of the bottom on which two opposite corners stand so many µm up. */
function mapped(twist: string): InspectionRecord {
  const values = ['0', '0', twist, '0', '0', '0', twist, '0', '0'];
  const places = values.map((value, index) => {
    const [up, across] = [5 + 15 * Math.floor(index / 3), 10 + 20 * (index % 3)];
    return [String(up), String(across), value] as const;
  });
  const map = overFaceSetup(places, 'face map', ['bottom', 'top']);
  const { setups, ...inspection } = compared('i', '34', '31');
  return { ...inspection, setups: [...setups, map] };
}

function found(inspection: InspectionRecord, entry: PartEntry, work = workOut): FixedFlatness {
  const [finding] = work(inspection, entry).answer?.flatness ?? [];
  if (finding?.fixed !== true) throw new Error('The map fixes it');
  return finding;
}

describe('a map that is wider than the drawing allows', () => {
  it('has its verdict after the simulation, the same beside the screen and apart from it', async () => {
    const [inspection, entry] = [mapped('6'), flatWithin('4')];
    const first = found(inspection, entry, workOutFlat);
    expect(first.zone.width).toBeCloseTo(6, 9);
    const chance = wideMapDraws(first.toSimulate!)(WIDE_MAP_DRAWS);
    expect(chance).toBeGreaterThan(first.probability);
    const settled = await vi.waitFor(
      () => {
        const now = found(inspection, entry);
        if (now.toSimulate !== undefined) throw new Error('Not yet');
        return now;
      },
      { timeout: 20_000, interval: 20 },
    );
    expect(settled.probability).toBe(chance);
    const [apart] = (await workOutApart(inspection, entry)).answer?.flatness ?? [];
    expect(apart).toEqual(settled);
  });

  it('leaves it unknown where the part stands, until then', async () => {
    const [inspection, entry] = [mapped('6'), flatWithin('4')];
    expect(standingOf(inspection, entry, workOutFlat)).toBeUndefined();
    const worked = await workOutApart(inspection, entry);
    const standing = standingOf(inspection, entry, () => worked);
    expect(standing?.notFixed).toBe(0);
    expect(standing?.probabilities).toHaveLength(3);
    expect(standing?.probabilities[2]).toBe(found(inspection, entry, () => worked).probability);
  });
});

describe('flatness beside the other requirements', () => {
  it('counts as not fixed while no map is there', () => {
    const standing = standingOf(compared('i', '34', '31'), flatWithin('4'));
    expect(standing).toMatchObject({ notFixed: 1 });
    expect(standing?.probabilities).toHaveLength(2);
    expect(standingOf(undefined, flatWithin('4'))).toMatchObject({ notFixed: 3 });
  });

  it('is in what finished readings said', async () => {
    chain.value = { part: 'p', links: [mapped('2')] };
    const stop = keepWhatIsSaid();
    closeInspection(mapped('2'), flatWithin('5'));
    const link = () => chain.value?.links[0] as InspectionRecord;
    await vi.waitFor(() => expect(link().closed?.said).toBeDefined());
    stop();
    await saving('saved');
    const { zone, probability, verdict } = found(link(), BLOCK);
    expect(link().closed?.method).toBe(METHOD);
    expect(link().closed?.said?.[2]).toMatchObject({
      requirement: 'flat',
      found: { value: zone.width, probability, verdict },
    });
  });

  it('is held against that of other readings, whatever line of the drawing it stands in', () => {
    const before = mapped('5');
    const entry = flatWithin('9');
    const { findings } = compare(before, { ...mapped('3'), id: 'j' }, entry);
    expect(findings.map(({ requirement }) => requirement.face)).toEqual([
      'right',
      'left',
      'bottom',
    ]);
    expect(findings[2]?.change).toBeCloseTo(-2, 9);
    const links = [before, { ...mapped('3'), id: 'j' }];
    const history = historiesOf(links, entry).at(-1);
    expect(history?.requirement.id).toBe('flat');
    expect(history?.points.map(({ finding }) => finding.zone.width)).toEqual([
      expect.closeTo(5, 9),
      expect.closeTo(3, 9),
    ]);
  });

  it('has a row of its own in the table, with no datum', () => {
    const inspection = mapped('2');
    const findings = allFindings(workOut(inspection, flatWithin('5')).answer);
    const rows = resultsCsv(part('p'), [{ inspection, findings }]).trim().split('\r\n');
    expect(rows.at(-1)).toContain(',flatness,bottom,,5,2,');
    expect(rows.at(-1)).toMatch(/,in$/);
  });

  it('is mapped from the first, and alone asks for nothing else', () => {
    chain.value = { part: 'p', links: [] };
    const kinds = (entry: PartEntry) => beginInspection('p', entry).setups.map(({ kind }) => kind);
    expect(kinds(flatWithin('5'))).toEqual(['nose comparator', 'face map']);
    chain.value = { part: 'p', links: [] };
    expect(kinds({ ...flatWithin('5'), requirements: [] })).toEqual(['face map']);
  });

  it('of one window and of another are both kept', () => {
    const record = (entry: PartEntry, changed: string) => ({ ...part('p'), entry, changed });
    const from = record(flatWithin('5'), '2024-03-05T14:00:00.000Z');
    const [mine] = flatWithin('5', 'mine').flatness!;
    const [theirs] = flatWithin('7', 'theirs').flatness!;
    const first = { ...from.entry, flatness: [...from.entry.flatness!, mine!] };
    const second = { ...from.entry, flatness: [...from.entry.flatness!, theirs!] };
    const { record: both, overruled } = merge(
      from,
      record(first, '2024-03-05T14:01:00.000Z'),
      record(second, '2024-03-05T14:02:00.000Z'),
    );
    const ids = both.kind === 'part' ? both.entry.flatness?.map(({ id }) => id) : [];
    expect([...(ids ?? [])].sort()).toEqual(['flat', 'mine', 'theirs']);
    expect(overruled).toBeUndefined();
  });
});
