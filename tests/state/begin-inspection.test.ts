import { beforeEach, describe, expect, it } from 'vitest';
import { chain, openChain } from '../../src/state/chain';
import { beginInspection } from '../../src/state/inspections';
import { changeSetups } from '../../src/state/plate-changes';
import { setUnits } from '../../src/state/shop-settings';
import { FORMAT, type InspectionRecord } from '../../src/store/records';
import { loadChain, save } from '../../src/store/shop-store';
import { asked, ENTRY } from '../entry/support/part';
import { assumption, micrometerSetup } from '../entry/support/setups';
import { micro, mm } from '../entry/support/typed';
import { work } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

const faces = ({ setups }: InspectionRecord) => setups.map(({ faces: [one] }) => one);

describe('the first inspection of a part', () => {
  it('has an empty sheet for each pair that the drawing asks about, by what it asks', async () => {
    await openChain('p');
    const requirements = [asked('back', 'bottom'), asked('top', 'bottom'), asked('right', 'left')];
    const begun = beginInspection('p', { ...ENTRY, requirements });
    expect(begun).toMatchObject({ kind: 'inspection', part: 'p', format: FORMAT });
    expect(begun.setups.map(({ kind }) => kind)).toEqual([
      'nose comparator',
      'micrometer',
      'micrometer',
    ]);
    expect(faces(begun)).toEqual(['back', 'top', 'right']);
    expect(chain.value?.links).toEqual([begun]);
    await saving('saved');
    expect((await loadChain('p')).records).toEqual([begun]);
  });

  it('has the units of the shop', async () => {
    await openChain('p');
    setUnits({ size: 'in', deviation: 'thou' });
    const [setup] = beginInspection('p', BLOCK).setups;
    expect(setup).toMatchObject({
      noseHeight: { unit: 'in' },
      placings: [{ reading: { unit: 'thou' } }, {}],
    });
    await saving('saved');
  });
});

describe('an inspection after others', () => {
  async function again(...earlier: InspectionRecord[]): Promise<InspectionRecord> {
    await save([...earlier, { ...work('w', 'p'), made: '2024-03-05T15:00:00.000Z' }]);
    await openChain('p');
    const begun = beginInspection('p', BLOCK);
    await saving('saved');
    return begun;
  }

  it('has the setups of the last one to be read again, the word on parallel faces too', async () => {
    const last = compared('i', '34', '31');
    const { setups } = await again({
      ...last,
      setups: [...last.setups, micrometerSetup([['5', '', '60']])],
    });
    expect(setups).toMatchObject([
      {
        kind: 'nose comparator',
        noseHeight: mm('6'),
        indicatorHeight: mm('80'),
        placings: [{ reading: micro('') }, { reading: micro('') }],
      },
      { kind: 'assumed parallel' },
      { kind: 'micrometer', places: [{ up: mm('5'), thickness: mm('') }] },
    ]);
    expect(setups.map(({ id }) => id)).not.toContain('nose');
  });

  it('leaves the last one as it was, when it is written in', async () => {
    const begun = await again(compared('i', '34', '31'));
    changeSetups(begun, () => []);
    await saving('saved');
    const { records } = await loadChain('p');
    expect(records.find(({ id }) => id === 'i')).toEqual(compared('i', '34', '31'));
    expect(records).toHaveLength(3);
  });

  it('begins as the first does where nothing of the last can be read again', async () => {
    const last = { ...compared('i', '34', '31'), setups: [assumption(micro('1'))] };
    expect(faces(await again(last))).toEqual(['right']);
  });

  it('takes after the latest of them', async () => {
    const older = compared('older', '34', '31');
    const newer = { ...compared('newer', '', ''), made: '2024-03-05T14:30:00.000Z' };
    const setups = [micrometerSetup([['7', '', '']])];
    expect((await again(older, { ...newer, setups })).setups).toMatchObject([
      { kind: 'micrometer' },
    ]);
  });
});
