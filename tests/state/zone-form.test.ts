import { beforeEach, describe, expect, it, vi } from 'vitest';
import { seatingsToSettleWithForm } from '../../src/core/inspection/seatings-with-form';
import { simulateZone } from '../../src/core/verdict/monte-carlo';
import type { PartEntry } from '../../src/entry/part-entry';
import { workOut } from '../../src/state/answers';
import type { InspectionRecord } from '../../src/store/records';
import { micro } from '../entry/support/typed';
import { startAfresh } from './support/fresh';
import { BLOCK, swept } from './support/inspections';

beforeEach(startAfresh);

const within = (tolerance: string): PartEntry => {
  return { ...BLOCK, requirements: [{ ...BLOCK.requirements[0]!, tolerance: micro(tolerance) }] };
};

function finding(inspection: InspectionRecord, part: PartEntry) {
  const [first] = workOut(inspection, part).answer?.findings ?? [];
  if (first?.fixed !== true) throw new Error('The readings fix it');
  return first;
}

/** The finding once there is no more to wait for. */
function settled(inspection: InspectionRecord, part: PartEntry) {
  return vi.waitFor(
    () => {
      const now = finding(inspection, part);
      if (now.withForm === undefined) throw new Error('No zone yet');
      if (now.verdict === 'too close to call' && now.seatings === undefined) {
        throw new Error('No seatings yet');
      }
      return now;
    },
    { timeout: 20_000, interval: 20 },
  );
}

describe('the zone with form', { timeout: 60_000 }, () => {
  it('comes after the answer on the plane, and its verdict with it', async () => {
    const [inspection, part] = [swept('21'), within('12')];
    const first = finding(inspection, part);
    expect(first.formPoints).toHaveLength(3);
    expect(first).not.toHaveProperty('withForm');
    const {
      zone,
      formPoints: points,
      withForm,
      probability,
      ...rest
    } = await settled(inspection, part);
    expect(withForm).toEqual(simulateZone({ ...zone, points, tolerance: 12 }));
    expect(probability).toBe(withForm?.probability);
    expect(rest).toMatchObject({ verdict: 'in' });
    expect(rest).not.toHaveProperty('seatings');
  });

  it('too close to call, is followed by the seatings that would settle it', async () => {
    const [inspection, part] = [swept('21.5'), within('8')];
    const {
      requirement,
      zone,
      formPoints: points,
      verdict,
      seatings,
    } = await settled(inspection, part);
    expect(verdict).toBe('too close to call');
    const { answer, part: block } = workOut(inspection, part);
    const { readings, kit } = answer!;
    const level = 0.95;
    const asked = { requirement, zone, points, block: block!.block, readings, kit, level };
    expect(seatings).toBe(seatingsToSettleWithForm(asked));
    expect(seatings).toBeGreaterThan(0);
  });

  it('is that of what was typed last', async () => {
    const part = within('8');
    const typed = ['22', '22.1', '22.2'].map(swept);
    for (const inspection of typed) finding(inspection, part);
    const last = await settled(typed.at(-1)!, part);
    const { zone, formPoints: points } = last;
    expect(last.withForm).toEqual(simulateZone({ ...zone, points, tolerance: 8 }));
  });
});
