import { beforeEach, expect, it } from 'vitest';
import { isReady, readPart } from '../../src/entry/read-part';
import { workOut } from '../../src/state/answers';
import { addExample } from '../../src/state/example';
import { parts } from '../../src/state/shop';
import type { InspectionRecord } from '../../src/store/records';
import { loadChain, loadParts } from '../../src/store/shop-store';
import { saving, startAfresh } from './support/fresh';

beforeEach(startAfresh);

/** The example with both readings of the comparator typed in. */
function withReadings(inspection: InspectionRecord, texts: readonly [string, string]) {
  const setups = inspection.setups.map((setup) => {
    if (setup.kind !== 'nose comparator') return setup;
    const placings = setup.placings.map((placing, index) => ({
      ...placing,
      reading: { ...placing.reading, text: texts[index] ?? '' },
    }));
    return { ...setup, placings };
  });
  return { ...inspection, setups };
}

it('the example is stored with its inspection, and marked as invented', async () => {
  const { part, inspection } = addExample();
  expect(parts.value.get(part.id)).toBe(part);
  expect(part.example).toBe(true);
  expect(part.entry.name).toContain('invented');
  await saving('saved');
  expect((await loadParts()).records).toEqual([part]);
  expect((await loadChain(part.id)).records).toEqual([inspection]);
});

it('its part is ready, and two readings are all that is missing', async () => {
  const { part, inspection } = addExample();
  expect(isReady(readPart(part.entry))).toBe(true);
  expect(workOut(inspection, part.entry).answer?.findings.map(({ fixed }) => fixed)).toEqual([
    false,
    false,
  ]);
  const { answer } = workOut(withReadings(inspection, ['34', '31']), part.entry);
  // The micrometer found the sides parallel: the mean is the zero, half the difference the lean.
  const [right] = answer?.findings ?? [];
  expect(right?.fixed && right.zone.width).toBeCloseTo((90 * 1.5) / 74, 9);
  expect(answer?.comparators[0]?.estimate?.value).toBeCloseTo(32.5, 9);
  await saving('saved');
});
