import type { PartEntry } from '../../../src/entry/part-entry';
import { FORMAT, type InspectionRecord, type WorkRecord } from '../../../src/store/records';
import { ENTRY } from '../../entry/support/part';
import { assumption, columnSetup, noseSetup } from '../../entry/support/setups';
import { micro, mm } from '../../entry/support/typed';
import { work } from '../../store/support/samples';

/** The block 60 × 40 × 90 with right and left to be square to the bottom within 5 µm. */
export const BLOCK: PartEntry = {
  ...ENTRY,
  requirements: [
    { id: 'right square', face: 'right', datum: 'bottom', tolerance: micro('5') },
    { id: 'left square', face: 'left', datum: 'bottom', tolerance: micro('5') },
  ],
};

/** An open inspection of the part 'p': nose at 6, indicator at 80, the faces assumed parallel within 1 µm. */
export function compared(id: string, right: string, left: string): InspectionRecord {
  return {
    format: FORMAT,
    made: '2024-03-05T14:07:00.000Z',
    changed: '2024-03-05T14:07:00.000Z',
    kind: 'inspection',
    id,
    part: 'p',
    setups: [noseSetup({ right, left }), assumption(micro('1'))],
  };
}

/** A column up both sides at three heights: the right is bowed by 3.5 µm, its zone about 7 µm wide. */
export function swept(middle: string): InspectionRecord {
  const column = columnSetup();
  const [right, left] = column.placings;
  const heights = [...column.heights, { id: 'middle', height: mm('45') }];
  const placings = [
    { ...right!, readings: { ...right!.readings, middle: micro(middle) } },
    { ...left!, readings: { ...left!.readings, middle: micro('15.5') } },
  ];
  const word = compared('i', '34', '31').setups[1]!;
  return { ...compared('i', '34', '31'), setups: [{ ...column, heights, placings }, word] };
}

/** Work on the bottom or the right of the part 'p' so that the right leans out less, after the inspection 'before'. */
export function workOn(face: 'bottom' | 'right', seconds: string): WorkRecord {
  return {
    ...work('work', 'p'),
    after: 'before',
    face,
    // The right leans out: the left edge of the bottom is high, or the top edge of the right.
    advised:
      face === 'bottom' ? { mean: 0.6, slopes: { x: -0.02 } } : { mean: 0.9, slopes: { z: 0.02 } },
    amount: { text: seconds, unit: 'seconds' },
  };
}
