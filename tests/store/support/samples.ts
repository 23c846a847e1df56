import { defaultKit } from '../../../src/entry/kit-entry';
import { blankPart } from '../../../src/entry/part-entry';
import { keyOf } from '../../../src/store/keys';
import {
  type EnteredRecord,
  FORMAT,
  type InspectionRecord,
  type PartRecord,
  type ShopRecord,
  type SummaryRecord,
  type VersionRecord,
  type WorkRecord,
} from '../../../src/store/records';

const MADE = {
  format: FORMAT,
  made: '2024-03-05T14:07:00.000Z',
  changed: '2024-03-05T14:07:00.000Z',
} as const;

export function part(id: string, name = 'Try square block'): PartRecord {
  return { ...MADE, kind: 'part', id, example: false, entry: { ...blankPart('mm'), name } };
}

export function inspection(id: string, ofPart: string): InspectionRecord {
  return { ...MADE, kind: 'inspection', id, part: ofPart, setups: [] };
}

export function work(id: string, ofPart: string): WorkRecord {
  return {
    ...MADE,
    kind: 'work',
    id,
    part: ofPart,
    after: 'inspection',
    face: 'bottom',
    method: 'lap',
    abrasive: '',
    amount: { text: '20', unit: 'seconds' },
    note: '',
    advised: { mean: 0.608, slopes: { x: -0.0203 } },
  };
}

export function shop(level = '95'): ShopRecord {
  const units = { size: 'mm', deviation: 'µm' } as const;
  return { ...MADE, kind: 'shop', kit: defaultKit(), units, level };
}

/** The state of `record` as it was kept. */
export function version(record: EnteredRecord): VersionRecord {
  const id = record.changed;
  return { ...MADE, kind: 'version', of: keyOf(record), id, record, why: 'A slip' };
}

export function summary(ofPart: string): SummaryRecord {
  return { ...MADE, kind: 'summary', part: ofPart };
}

/** A value that no database takes: it holds a function. */
export function uncloneable(id: string): PartRecord {
  return { ...part(id), cannotBeStored: () => undefined } as PartRecord;
}
