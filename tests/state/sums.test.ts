import { effect } from '@preact/signals';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { workOut } from '../../src/state/answers';
import { kit, setKit } from '../../src/state/kits';
import { shop } from '../../src/state/shop';
import { micro } from '../entry/support/typed';
import { startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

/** The package may take its time to load. */
const PATIENCE = { timeout: 60_000 };

describe('a sum among the readings', () => {
  it('is waited for, and everything is worked out again once it can be', async () => {
    const inspection = compared('i', '30+4', '31 µm');
    const silences: unknown[] = [];
    const widths: unknown[] = [];
    const end = effect(() => {
      const { silence, answer } = workOut(inspection, BLOCK);
      const [finding] = answer?.findings ?? [];
      silences.push(silence);
      widths.push(finding?.fixed && finding.zone.width.toFixed(3));
    });
    await vi.waitFor(() => expect(silences.at(-1)).toBeUndefined(), PATIENCE);
    end();
    expect(silences[0]).toBe('waiting');
    expect(widths.at(-1)).toBe('1.824');
  });

  it('of the part and of the kit too', async () => {
    setKit({ ...shop.value.kit, seating: micro('1/2 + 1/2') });
    await vi.waitFor(() => expect(kit.value?.seating).toBe(1), PATIENCE);
    const sized = { ...BLOCK, size: { ...BLOCK.size, x: micro('60 mm') } };
    expect(workOut(compared('i', '34', '31'), sized).part?.block.size.x).toBe(60);
  });
});
