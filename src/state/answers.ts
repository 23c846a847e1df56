import type { Finding } from '../core/inspection/findings';
import { type InspectionAnswer, inspect } from '../core/inspection/inspect';
import type { Part } from '../core/part/part';
import type { Reading } from '../core/readings/reading';
import { sitReading } from '../core/readings/unknowns';
import type { PartEntry } from '../entry/part-entry';
import { anyWrong, type Problems } from '../entry/problems';
import { readKit } from '../entry/read-kit';
import { readPart } from '../entry/read-part';
import { readSetups } from '../entry/read-setups';
import type { InspectionRecord } from '../store/records';
import { level, shop } from './shop';
import { simulatedZone } from './zone-form/simulated-zones';

/** What an inspection says, or why it says nothing yet. */
export interface Worked {
  readonly part: Part | undefined;
  readonly problems: Problems;
  readonly answer: InspectionAnswer | undefined;
  /** Present where there is no answer. */
  readonly silence?: 'part' | 'kit' | 'wrong' | 'nothing read';
}

const NONE: Problems = new Map();

/**
 * Works an inspection out from what was typed. A finished one is worked out with the part and the
 * kit that it was finished with, an open one with those of now.
 */
export function workOut(inspection: InspectionRecord, now: PartEntry): Worked {
  const { part, problems: partProblems } = readPart(inspection.closed?.part ?? now);
  if (part === undefined || anyWrong(partProblems)) {
    return { part: undefined, problems: NONE, answer: undefined, silence: 'part' };
  }
  const { readings: typed, problems } = readSetups(inspection.setups, part);
  const readings = typed.filter((reading) => !isLeftOut(reading, inspection));
  const { kit } = readKit(inspection.closed?.kit ?? shop.value.kit);
  const silent = (silence: NonNullable<Worked['silence']>): Worked => {
    return { part, problems, answer: undefined, silence };
  };
  if (anyWrong(problems)) return silent('wrong');
  if (kit === undefined || level.value === undefined) return silent('kit');
  if (readings.length === 0) return silent('nothing read');
  const answer = inspect(part, readings, kit, level.value);
  return { part, problems, answer: { ...answer, findings: answer.findings.map(withItsForm) } };
}

/** True where the reading was taken out of the reckoning, by itself or with all of its placing. */
function isLeftOut(reading: Reading, { leftOut = {} }: InspectionRecord): boolean {
  const names = 'placing' in reading ? [reading.id, sitReading(reading.placing)] : [reading.id];
  return names.some((name) => leftOut[name] !== undefined);
}

/** The finding with its form taken in, as soon as that is worked out. */
function withItsForm(finding: Finding): Finding {
  if (!finding.fixed || finding.formPoints.length === 0) return finding;
  const withForm = simulatedZone(finding);
  if (withForm === undefined) return finding;
  const { probability, verdict } = withForm;
  return { ...finding, withForm, probability, verdict };
}
