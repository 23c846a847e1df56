import type { Finding } from '../core/inspection/findings';
import { withFindings } from '../core/inspection/inspect';
import { isPending } from '../core/inspection/said';
import { decide } from '../core/verdict/conformity';
import type { PartEntry } from '../entry/part-entry';
import type { InspectionRecord } from '../store/records';
import { levelFor, type Worked, workOutFlat } from './answers';
import { zoneApart } from './zone-form/apart';

/** The same as `workOut`, waited for, of an inspection that nobody looks at. */
export async function workOutApart(inspection: InspectionRecord, now: PartEntry): Promise<Worked> {
  const worked = workOutFlat(inspection, now);
  const { answer } = worked;
  const level = levelFor(inspection, now);
  if (level === undefined || !answer?.findings.some(isPending)) return worked;
  const findings: Finding[] = [];
  for (const finding of answer.findings) findings.push(await withItsForm(finding, level));
  return { ...worked, answer: withFindings(answer, findings) };
}

async function withItsForm(finding: Finding, level: number): Promise<Finding> {
  if (!finding.fixed || !isPending(finding)) return finding;
  const withForm = await zoneApart(finding);
  const { probability } = withForm;
  return { ...finding, withForm, probability, verdict: decide(probability, level) };
}
