import { beforeEach, describe, expect, it, vi } from 'vitest';
import { METHOD } from '../../src/core/inspection/method';
import { expanded } from '../../src/core/statistics/coverage';
import { workOut } from '../../src/state/answers';
import { chain } from '../../src/state/chain';
import { closeInspection } from '../../src/state/inspections';
import { keepWhatIsSaid, methodChange } from '../../src/state/said';
import { setLevel, setWho } from '../../src/state/shop-settings';
import type { InspectionRecord } from '../../src/store/records';
import { columnSetup } from '../entry/support/setups';
import { micro, mm } from '../entry/support/typed';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

const READ = compared('i', '34', '31');

function link(): InspectionRecord {
  const [first] = chain.value?.links ?? [];
  if (first?.kind !== 'inspection') throw new Error('There is an inspection');
  return first;
}

/** Finishes the readings, as the screens do, and waits for what they say to be kept. */
async function finished(inspection: InspectionRecord, part = BLOCK): Promise<InspectionRecord> {
  chain.value = { part: 'p', links: [inspection] };
  const stop = keepWhatIsSaid();
  closeInspection(inspection, part);
  await vi.waitFor(() => expect(link().closed?.said).toBeDefined(), { timeout: 20_000 });
  stop();
  await saving('saved');
  return link();
}

/** The same finished readings as if another version of the method had said something else then. */
function saidBefore(inspection: InspectionRecord, factor: number): InspectionRecord {
  const { closed } = inspection;
  const said = closed!.said!.map(({ requirement, found }) => {
    return { requirement, ...(found && { found: { ...found, value: found.value * factor } }) };
  });
  return { ...inspection, closed: { ...closed!, method: 7, said } };
}

describe('readings that are finished', () => {
  it('keep what was said, by which method, at which level and by whom', async () => {
    setWho('  R. Example ');
    const { closed } = await finished(READ);
    const [finding] = workOut(READ, BLOCK).answer!.findings;
    if (finding?.fixed !== true) throw new Error('The readings fix it');
    expect(closed).toMatchObject({ method: METHOD, level: '95', who: 'R. Example' });
    expect(closed?.said?.[0]).toEqual({
      requirement: 'right square',
      found: {
        value: finding.zone.width,
        expanded: expanded(finding.zone),
        probability: finding.probability,
        verdict: finding.verdict,
      },
    });
  });

  it('keep it with the form, once that is worked out', async () => {
    const column = columnSetup();
    const [right, left] = column.placings;
    const heights = [...column.heights, { id: 'middle', height: mm('45') }];
    const placings = [
      { ...right!, readings: { ...right!.readings, middle: micro('21') } },
      { ...left!, readings: { ...left!.readings, middle: micro('15.5') } },
    ];
    const { closed } = await finished({
      ...READ,
      setups: [{ ...column, heights, placings }, READ.setups[1]!],
    });
    expect(closed?.said?.[0]?.found?.withForm?.width).toBeGreaterThan(5);
  });

  it('keep that a requirement was not fixed', async () => {
    const { closed } = await finished(compared('i', '34', ''));
    expect(closed?.said).toEqual([{ requirement: 'right square' }, { requirement: 'left square' }]);
  });

  it('go on being held to the level that they were finished with', async () => {
    const line = { ...BLOCK.requirements[0]!, tolerance: micro('2.5') };
    const part = { ...BLOCK, requirements: [line] };
    const verdict = (of: InspectionRecord) => {
      const [finding] = workOut(of, part).answer?.findings ?? [];
      return finding?.fixed ? finding.verdict : undefined;
    };
    setLevel('60');
    const inspection = await finished(READ, part);
    setLevel('99.9');
    expect(verdict(READ)).toBe('too close to call');
    expect(verdict(inspection)).toBe('in');
    expect(methodChange(inspection)).toBeUndefined();
    await saving('saved');
  });

  it('that another version of the method finished are left as they are', async () => {
    const { said: _, ...closed } = (await finished(READ)).closed!;
    const older = { ...READ, closed: { ...closed, method: METHOD + 1 } };
    chain.value = { part: 'p', links: [older] };
    keepWhatIsSaid()();
    await Promise.resolve();
    expect(link()).toBe(older);
  });
});

describe('a later version of the method', () => {
  it('shows where it says something else, and what it was then', async () => {
    const inspection = saidBefore(await finished(READ), 1.1);
    const [first] = inspection.closed!.said!;
    expect(methodChange(inspection)).toMatchObject({
      ...{ before: 7, now: METHOD },
      changes: [
        { requirement: 'right square', before: first!.found },
        { requirement: 'left square' },
      ],
    });
  });

  it('has nothing to show where it says the same but for rounding', async () => {
    expect(methodChange(saidBefore(await finished(READ), 1 + 1e-9))).toBeUndefined();
    expect(methodChange(READ)).toBeUndefined();
  });
});
