import { beforeEach, describe, expect, it } from 'vitest';
import { workOut } from '../../src/state/answers';
import { chain } from '../../src/state/chain';
import { exampleWith } from '../../src/state/example';
import { guideStep } from '../../src/state/example-guide';
import type { InspectionRecord, PartRecord } from '../../src/store/records';
import { startAfresh } from './support/fresh';

beforeEach(startAfresh);

interface Typed {
  readonly right: string;
  readonly left: string;
  /** What the micrometer showed at the top, mm; none without the micrometer. */
  readonly top?: string | undefined;
}

const PLAYED: Typed = { right: '41', left: '29', top: '60.001' };

/** The example with what is typed into it. */
function read({ right, left, top }: Typed) {
  const { part, inspection } = exampleWith('');
  const setups = inspection.setups.flatMap((setup): InspectionRecord['setups'] => {
    if (setup.kind === 'nose comparator') {
      const shown = { right, left } as Record<string, string>;
      return [
        {
          ...setup,
          placings: setup.placings.map((placing) => ({
            ...placing,
            reading: { text: shown[placing.face] ?? '', unit: 'µm' as const },
          })),
        },
      ];
    }
    if (setup.kind !== 'micrometer' || top === undefined) return [];
    const [low, high] = setup.places;
    if (low === undefined || high === undefined) throw new Error('The micrometer has two places.');
    return [
      { ...setup, places: [low, { ...high, thickness: { text: top, unit: 'mm' as const } }] },
    ];
  });
  return { part, inspection: { ...inspection, setups } };
}

function stepOf(typed: Typed) {
  const { part, inspection } = read(typed);
  return guideStep(part, inspection, workOut(inspection, part.entry));
}

/** The step once the example was worked and read `again`. */
function stepAfterWork(before: Typed, again: Typed) {
  const { part, inspection } = read(before);
  const then = { ...read(again).inspection, part: part.id };
  chain.value = { part: part.id, links: [inspection, workOn(part, inspection), then] };
  return guideStep(part, then, workOut(then, part.entry));
}

function workOn({ id, format, made, changed }: PartRecord, { id: after }: InspectionRecord) {
  return {
    ...{ kind: 'work' as const, id: 'work', part: id, after, format, made, changed },
    ...{ face: 'bottom' as const, method: 'lap' as const, abrasive: '', note: '' },
    amount: { text: '12', unit: 'seconds' as const },
    advised: { mean: 0.6, slopes: { x: -0.02 } },
  };
}

describe('the guide once both sides are read', () => {
  it('the mean is the zero where the sides were found parallel', () => {
    expect(stepOf(PLAYED)).toMatchObject({
      ...{ kind: 'zero falls out', zero: expect.closeTo(35, 9), isMean: true, assumed: false },
      workFirst: 'bottom',
    });
  });

  it('it is not where they have a taper, however little of it is shown', () => {
    // Half the taper over the comparator's 74 mm: 0.1 µm over 80 mm takes the zero 0.046 µm from the mean, 0.2 µm 0.0925.
    expect(stepOf({ ...PLAYED, top: '60.0011' })).toMatchObject({ isMean: true });
    expect(stepOf({ ...PLAYED, top: '60.0012' })).toMatchObject({ isMean: false });
  });

  it('the work begins with the face that the advice begins with', () => {
    expect(stepOf({ ...PLAYED, top: '60.009' })).toMatchObject({ workFirst: 'right' });
  });

  it('nothing is worked where both sides show the same', () => {
    expect(stepOf({ ...PLAYED, right: '35', left: '35' })).toMatchObject({ workFirst: undefined });
  });

  it('there is no zero and no work where nothing tells whether the sides are parallel', () => {
    expect(stepOf({ ...PLAYED, top: undefined })).toMatchObject({
      ...{ zero: undefined, isMean: false, workFirst: undefined },
    });
  });
});

describe('the guide once it was worked and read again', () => {
  it('the zero is where it was, and all is in', () => {
    expect(stepAfterWork(PLAYED, { ...PLAYED, right: '36', left: '34' })).toMatchObject({
      ...{ kind: 'end', hasMoved: false, isIn: true },
    });
  });

  it('the zero has moved where the dial was turned', () => {
    expect(stepAfterWork(PLAYED, { ...PLAYED, right: '46', left: '44' })).toMatchObject({
      ...{ hasMoved: true, isIn: true },
    });
  });

  it('a lean that is left is told', () => {
    expect(stepAfterWork(PLAYED, { ...PLAYED, right: '40', left: '30' })).toMatchObject({
      ...{ hasMoved: false, isIn: false },
    });
  });
});
