import type { Finding } from '../core/inspection/findings';
import type { FlatnessFinding } from '../core/inspection/flatness';
import { type InspectionAnswer, inspect, withFindings } from '../core/inspection/inspect';
import type { Part } from '../core/part/part';
import type { Reading } from '../core/readings/reading';
import { sitReading } from '../core/readings/unknowns';
import type { ArithmeticSoFar } from '../entry/arithmetic';
import { areOnlyBegun } from '../entry/begun';
import type { KitEntry } from '../entry/kit-entry';
import type { PartEntry } from '../entry/part-entry';
import { anyWaiting, anyWrong, type Problems } from '../entry/problems';
import { readKit } from '../entry/read-kit';
import { isReady, readPart } from '../entry/read-part';
import { readSetups } from '../entry/read-setups';
import type { InspectionRecord } from '../store/records';
import { arithmetic } from './arithmetic/arithmetic';
import { shop } from './shop';
import { level, readLevel } from './shop-settings';
import type { Grounds } from './zone-form/questions';
import { simulatedFlatness, simulatedZone } from './zone-form/simulated-zones';

/** What an inspection says, or why it says nothing yet. */
export interface Worked {
  readonly part: Part | undefined;
  readonly problems: Problems;
  readonly answer: InspectionAnswer | undefined;
  /** Present where there is no answer. */
  readonly silence?: 'part' | 'kit' | 'wrong' | 'begun' | 'waiting' | 'nothing read';
}

const NONE: Problems = new Map();

/** What an answer was worked out from, beside what was typed. */
interface Given {
  readonly leftOut: InspectionRecord['leftOut'];
  readonly part: PartEntry;
  readonly kit: KitEntry;
  readonly level: number | undefined;
  readonly sums: ArithmeticSoFar;
}

/** Parts and kits stay what they are while readings are typed: they are not read anew at each key. */
const partOf = oncePer(readPart);
const kitOf = oncePer(readKit);

/** What was read without what works out sums is read again with it. */
function oncePer<K extends object, V>(read: (entry: K) => V): (entry: K) => V {
  const kept = new WeakMap<K, { readonly sums: ArithmeticSoFar; readonly value: V }>();
  return (entry) => {
    const sums = arithmetic.value;
    const before = kept.get(entry);
    if (before?.sums === sums) return before.value;
    const value = read(entry);
    kept.set(entry, { sums, value });
    return value;
  };
}

/**
 * The same readings, part and kit are not worked out twice, whatever else of the record has changed,
 * such as that it is finished: records never change, they are replaced, and share what stays the same.
 */
const known = new WeakMap<
  InspectionRecord['setups'],
  { readonly given: Given; readonly worked: Worked }
>();

/**
 * Works an inspection out from what was typed. A finished one is worked out with the part, the kit
 * and the level that it was finished with, an open one with those of now.
 */
export function workOut(inspection: InspectionRecord, now: PartEntry): Worked {
  return withForms(workOutFlat(inspection, now), givenFor(inspection, now).level);
}

/** The same with form left out, which is worked out elsewhere and one part at a time. */
export function workOutFlat(inspection: InspectionRecord, now: PartEntry): Worked {
  const given = givenFor(inspection, now);
  const kept = known.get(inspection.setups);
  const worked =
    kept && isSame(kept.given, given) ? kept.worked : workOutOf(inspection.setups, given);
  known.set(inspection.setups, { given, worked });
  return worked;
}

/** The least probability for a verdict on the inspection; undefined while what is typed is none. */
export function levelFor(inspection: InspectionRecord, now: PartEntry): number | undefined {
  return givenFor(inspection, now).level;
}

function givenFor({ closed, leftOut }: InspectionRecord, now: PartEntry): Given {
  const same = { leftOut, sums: arithmetic.value };
  if (closed === undefined) return { ...same, part: now, kit: shop.value.kit, level: level.value };
  const { part, kit, level: typed } = closed;
  return { ...same, part, kit, level: typed === undefined ? level.value : readLevel(typed) };
}

const GIVEN = ['leftOut', 'part', 'kit', 'level', 'sums'] as const;

function isSame(one: Given, other: Given): boolean {
  return GIVEN.every((what) => one[what] === other[what]);
}

function workOutOf(setups: InspectionRecord['setups'], given: Given): Worked {
  const partRead = partOf(given.part);
  const { part } = partRead;
  if (part === undefined || !isReady(partRead)) {
    const silence = anyWaiting(partRead.problems) ? 'waiting' : 'part';
    return { part: undefined, problems: NONE, answer: undefined, silence };
  }
  const { readings: typed, problems, planned } = readSetups(setups, part);
  const readings = typed.filter((reading) => !isLeftOut(reading, given));
  const { kit, problems: kitProblems } = kitOf(given.kit);
  const silent = (silence: NonNullable<Worked['silence']>): Worked => {
    return { part, problems, answer: undefined, silence };
  };
  if (anyWrong(problems)) return silent(areOnlyBegun(setups, problems) ? 'begun' : 'wrong');
  if (anyWaiting(problems) || anyWaiting(kitProblems)) return silent('waiting');
  if (kit === undefined || given.level === undefined) return silent('kit');
  if (readings.length === 0) return silent('nothing read');
  return { part, problems, answer: inspect(part, readings, kit, given.level, planned) };
}

/** The same with form taken in where there is any, as far as it is worked out by now. */
function withForms(worked: Worked, sureness: number | undefined): Worked {
  const { part, answer } = worked;
  if (part === undefined || answer === undefined || sureness === undefined) return worked;
  if (!answer.findings.some(hasForm) && !answer.flatness.some(isWide)) return worked;
  const { readings, kit } = answer;
  const grounds = { block: part.block, readings, kit, level: sureness };
  const findings = answer.findings.map((finding) => withItsForm(finding, grounds));
  const flatness = answer.flatness.map((finding) =>
    finding.fixed ? simulatedFlatness(finding, sureness) : finding,
  );
  return { ...worked, answer: withFindings(answer, { findings, flatness }) };
}

function isWide(finding: FlatnessFinding): boolean {
  return finding.fixed && finding.toSimulate !== undefined;
}

function hasForm(finding: Finding): boolean {
  return finding.fixed && finding.formPoints.length > 0;
}

/** True where the reading was taken out of the reckoning, by itself or with all of its placing. */
function isLeftOut(reading: Reading, { leftOut = {} }: Given): boolean {
  const names = 'placing' in reading ? [reading.id, sitReading(reading.placing)] : [reading.id];
  return names.some((name) => leftOut[name] !== undefined);
}

/** The finding with its form taken in, as soon as that is worked out. */
function withItsForm(finding: Finding, grounds: Grounds): Finding {
  if (!finding.fixed || finding.formPoints.length === 0) return finding;
  const judged = simulatedZone(finding, grounds);
  if (judged === undefined) return finding;
  const { zone: withForm, ...verdict } = judged;
  return { ...finding, withForm, probability: withForm.probability, ...verdict };
}
