import { beforeEach, describe, expect, it } from 'vitest';
import { workOut } from '../../src/state/answers';
import { chain, openChain } from '../../src/state/chain';
import { leaveOut, putBack } from '../../src/state/plate-changes';
import type { InspectionRecord } from '../../src/store/records';
import { save } from '../../src/store/shop-store';
import { columnSetup } from '../entry/support/setups';
import { micro } from '../entry/support/typed';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

/** A column up the right three times, the last time with the block on a chip: 0.5 µm/mm more. */
const READ: InspectionRecord = (() => {
  const column = columnSetup();
  const [right, left] = column.placings;
  const seating = (id: string, high: string) => ({
    ...{ ...right!, id },
    readings: { low: micro('4'), high: micro(high) },
  });
  const placings = [right!, left!, seating('second', '31.2'), seating('third', '66')];
  return {
    ...compared('i', '34', '31'),
    setups: [{ ...column, placings }, compared('i', '34', '31').setups[1]!],
  };
})();
const SIT = 'sit of third';

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

function answer(inspection = now()) {
  const worked = workOut(inspection, BLOCK).answer;
  if (worked === undefined) throw new Error('It says nothing');
  return worked;
}

const checked = () => answer().checks.map(({ reading }) => reading);

describe('how the block sat, left out', () => {
  it('is suspect where one seating stands off, as are its two readings: they are not told apart', () => {
    const suspects = answer().suspects.map(({ reading }) => reading);
    expect(suspects).toEqual(['third low', 'third high', SIT]);
  });

  it('takes all readings of that placing out, and those of no other', async () => {
    expect(checked()).toEqual(expect.arrayContaining(['third low', 'third high', SIT]));
    leaveOut(now(), SIT, 'A chip under the part');
    expect(checked().filter((id) => id.includes('third'))).toEqual([]);
    expect(checked()).toEqual([
      ...['on right low', 'on right high', 'on left low', 'on left high'],
      ...['second low', 'second high', 'word', 'word'],
      ...['sit of on right', 'sit of on left', 'sit of second'],
    ]);
    await saving('saved');
  });

  it('leaves what was never read there', async () => {
    const [setup, word] = READ.setups;
    if (setup?.kind !== 'column') throw new Error('Another setup');
    const before = { ...setup, placings: setup.placings.slice(0, 3) };
    const expected = answer({ ...READ, setups: [before, word!] });
    leaveOut(now(), SIT, 'A chip under the part');
    expect(answer().sides).toEqual(expected.sides);
    expect(answer().suspects).toEqual([]);
    await saving('saved');
  });

  it('comes back with all of them', async () => {
    const { checks, findings } = answer();
    leaveOut(now(), SIT, 'A chip under the part');
    putBack(now(), SIT);
    expect(answer().checks).toEqual(checks);
    expect(answer().findings).toEqual(findings);
    await saving('saved');
  });
});
