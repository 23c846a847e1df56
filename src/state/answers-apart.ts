import { allFindings, isPending } from '../core/inspection/any-finding';
import type { Finding } from '../core/inspection/findings';
import { type FlatnessFinding, settledFlatness } from '../core/inspection/flatness';
import { withFindings } from '../core/inspection/inspect';
import { decide } from '../core/verdict/conformity';
import type { PartEntry } from '../entry/part-entry';
import type { InspectionRecord } from '../store/records';
import { levelFor, type Worked, workOutFlat } from './answers';
import { arithmetic } from './arithmetic/arithmetic';
import { answerApart } from './zone-form/apart';
import { flatnessQuestion, zoneQuestion } from './zone-form/questions';

/** The same as `workOut`, waited for, of an inspection that nobody looks at. */
export async function workOutApart(inspection: InspectionRecord, now: PartEntry): Promise<Worked> {
  const worked = workOutFlat(inspection, now);
  const { answer } = worked;
  const level = levelFor(inspection, now);
  if (level === undefined || answer === undefined) return worked;
  if (!allFindings(answer).some(isPending)) return worked;
  const findings: Finding[] = [];
  for (const finding of answer.findings) findings.push(await withItsForm(finding, level));
  const flatness: FlatnessFinding[] = [];
  for (const finding of answer.flatness) flatness.push(await settled(finding, level));
  return { ...worked, answer: withFindings(answer, { findings, flatness }) };
}

async function withItsForm(finding: Finding, level: number): Promise<Finding> {
  if (!finding.fixed || !isPending(finding)) return finding;
  const { zone: withForm } = await answerApart(zoneQuestion(finding));
  const { probability } = withForm;
  return { ...finding, withForm, probability, verdict: decide(probability, level) };
}

async function settled(finding: FlatnessFinding, level: number): Promise<FlatnessFinding> {
  if (!finding.fixed || finding.toSimulate === undefined) return finding;
  const question = flatnessQuestion(finding.requirement.id, finding.toSimulate);
  const { probability } = await answerApart(question);
  return settledFlatness(finding, probability, level);
}

/** True once the readings are read, for sums may have to be waited for; false where what works out their sums will not load. */
export async function isRead(inspection: InspectionRecord, entry: PartEntry): Promise<boolean> {
  if (workOutFlat(inspection, entry).silence !== 'waiting') return true;
  await new Promise<void>((resolve) => {
    const stop = arithmetic.subscribe((now) => {
      if (now === 'waiting') return;
      resolve();
      queueMicrotask(() => stop());
    });
  });
  return arithmetic.peek() !== 'missing';
}
