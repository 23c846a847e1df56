import type { Face } from '../../src/core/part/faces';
import { defaultKit } from '../../src/entry/kit-entry';
import type { SetupEntry } from '../../src/entry/setup-entry';
import type { TypedLength } from '../../src/entry/typed-length';
import type { InspectionRecord, PartRecord, WorkRecord } from '../../src/store/records';

/*
 * An invented part that was read more than any is, so that its record takes pages: every way of
 * reading, a reading left out, two corrections, and figures of which each is another one.
 */

const BASE = {
  format: 2,
  made: '2024-03-05T08:00:00.000Z',
  changed: '2024-03-05T14:07:00.000Z',
} as const;
const PART = { part: 'long' } as const;

const mm = (text: string): TypedLength => ({ text, unit: 'mm' });
const micro = (value: number): TypedLength => ({ text: value.toFixed(2), unit: 'µm' });

/** Some noise that is the same each time: µm. */
const noise = (index: number) => 0.4 * Math.sin(index * 2.39);

const HEIGHTS = Array.from({ length: 17 }, (_, index) => 5 + index * 5);

function column(id: string): SetupEntry {
  const sides: readonly [Face, number][] = [
    ['right', 0.081],
    ['left', -0.032],
    ['right', 0.081],
    ['left', -0.032],
  ];
  return {
    ...{ kind: 'column', id, faces: ['right', 'left'], base: 'bottom' },
    heights: HEIGHTS.map((height) => ({ id: `at ${height}`, height: mm(String(height)) })),
    placings: sides.map(([face, slope], placing) => ({
      ...{ id: `${id} ${placing}`, face },
      readings: Object.fromEntries(
        HEIGHTS.map((height) => {
          const value = 3 * placing + slope * height + noise(height + 7 * placing);
          return [`at ${height}`, micro(value)];
        }),
      ),
    })),
  };
}

const nose: SetupEntry = {
  ...{ kind: 'nose comparator', id: 'nose', faces: ['front', 'back'], base: 'bottom' },
  ...{ noseHeight: mm('6'), indicatorHeight: mm('80') },
  placings: [
    { id: 'front 1', face: 'front', reading: micro(12.13) },
    { id: 'back 1', face: 'back', reading: micro(7.41) },
    { id: 'front 2', face: 'front', reading: micro(12.46) },
    { id: 'back 2', face: 'back', reading: micro(19.87) },
  ],
};

const micrometer: SetupEntry = {
  ...{ kind: 'micrometer', id: 'micrometer', faces: ['right', 'left'] },
  places: [5, 45, 85].map((up, index) => ({
    ...{ id: `place ${up}`, up: mm(String(up)), across: mm('20') },
    thickness: mm((60.0021 + up * 0.00005 + index * 0.0001).toFixed(4)),
  })),
};

const map: SetupEntry = {
  ...{ kind: 'over the top', id: 'over', faces: ['top', 'bottom'] },
  places: [10, 30].flatMap((up) =>
    [10, 50].map((across) => ({
      ...{ id: `over ${up} ${across}`, up: mm(String(up)), across: mm(String(across)) },
      reading: micro(0.31 + up * 0.021 + across * 0.013),
    })),
  ),
};

const word: SetupEntry = {
  ...{ kind: 'assumed parallel', id: 'word', faces: ['front', 'back'] },
  within: micro(2.25),
};

export const LONG_PART: PartRecord = {
  ...{ ...BASE, kind: 'part', id: PART.part, example: false },
  entry: {
    ...{ name: 'Long-winded block', job: 'Job 4711-B', material: 'Tool steel, hardened' },
    size: { x: mm('60'), y: mm('40'), z: mm('90') },
    ...{ datum: 'bottom', finished: ['top'] },
    requirements: [
      { id: 'right', face: 'right', datum: 'bottom', tolerance: mm('0.008') },
      { id: 'left', face: 'left', datum: 'bottom', tolerance: mm('0.005') },
      { id: 'front', face: 'front', datum: 'bottom', tolerance: micro(6) },
      { id: 'top', face: 'top', datum: 'bottom', tolerance: micro(4) },
      { id: 'sides', face: 'right', datum: 'left', tolerance: micro(9) },
    ],
  },
};

export const LONG_INSPECTION: InspectionRecord = {
  ...{ ...BASE, kind: 'inspection', id: 'long-readings', ...PART },
  setups: [column('first'), nose, column('second'), micrometer, map, word],
  leftOut: { 'back 2': { at: '2024-03-05T13:59:00.000Z', why: 'a chip under the block' } },
  closed: {
    ...{ at: '2024-03-05T14:07:00.000Z', part: LONG_PART.entry, kit: defaultKit() },
    ...{ level: '95', who: 'The second shift', method: 1 },
  },
};

const before: InspectionRecord = {
  ...LONG_INSPECTION,
  ...{ id: 'before', made: '2024-03-04T08:00:00.000Z', setups: [column('first'), word] },
};

const work: WorkRecord = {
  ...{ ...BASE, kind: 'work', id: 'work', ...PART, made: '2024-03-04T10:00:00.000Z' },
  ...{ after: 'before', face: 'bottom', method: 'lap', abrasive: 'P400 paper', note: 'Lightly' },
  ...{ amount: { text: '45', unit: 'seconds' }, advised: { mean: 0.6, slopes: { x: -0.02 } } },
};

/** All of it as a backup that is not packed. */
export function longBackup(): Buffer {
  const records = [LONG_PART, before, work, LONG_INSPECTION].map((one) => JSON.stringify(one));
  const head = '{"highedge":"backup","version":1,"made":"2024-03-05T14:07:00.000Z","app":"0.1.0"';
  return Buffer.from(`${head},"records":[\n${records.join(',\n')}\n],"count":${records.length}}\n`);
}
