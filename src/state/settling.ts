import { effect } from '@preact/signals';
import { allFindings, isPending } from '../core/inspection/any-finding';
import { linesOf, type PartEntry } from '../entry/part-entry';
import type { InspectionRecord, Standing, SummaryRecord } from '../store/records';
import { saidByThisMethod } from '../store/said';
import { loadChain } from '../store/shop-store';
import { onArrival } from './agreed';
import { workOut, workOutFlat } from './answers';
import { isRead, workOutApart } from './answers-apart';
import { chain, latestInspection } from './chain';
import { whenAtRest } from './idle';
import { kitMark } from './kit-mark';
import { oldestFirst } from './oldest-first';
import { keep } from './saving';
import { newRecord, parts, shop } from './shop';
import { showSummaries, summaries } from './summaries';

/*
 * Where each part stands is worked out again after its readings have come to rest, and written
 * beside it: the list of all parts reads nothing else. Opening a part works it out anew.
 */

/** ms without a change after which readings are taken to be at rest. */
const REST = 700;
/** Parts whose standing is written in one transaction while the list waits for them. */
const AT_ONCE = 20;

/** Keeps the summary of the open part up to date until the returned function is called, which does it once more. */
export function settleOpenPart(part: string): () => void {
  let stopFollowing = () => {};
  let rest: ReturnType<typeof setTimeout> | undefined;
  const settle = () => {
    stopFollowing();
    // Form is worked out elsewhere, and comes later: then it is settled again.
    stopFollowing = effect(() => settleNow(part));
  };
  const stop = effect(() => {
    void [chain.value, parts.value, shop.value];
    clearTimeout(rest);
    rest = setTimeout(settle, REST);
  });
  return () => {
    stop();
    clearTimeout(rest);
    settle();
    stopFollowing();
  };
}

function settleNow(part: string): void {
  const record = parts.peek().get(part);
  const open = chain.peek();
  if (record === undefined || open?.part !== part) return;
  const standing = standingOf(latestInspection(open.links), record.entry);
  const known = summaries.peek().get(part)?.standing;
  if (standing === undefined || JSON.stringify(standing) === JSON.stringify(known)) return;
  put([summaryOf(part, standing)]);
}

/** Where a part stands, and whether that still holds: it or its readings may have been changed since, in any window. */
interface Settled {
  readonly summary: SummaryRecord;
  readonly holds: () => boolean;
}

/**
 * Works out where all the parts stand of which it is not known, those given first, until
 * `isWanted` says no more. Every part has a turn of its own, when there is nothing else to do.
 */
export async function settleAll(ids: readonly string[], isWanted: () => boolean): Promise<void> {
  let settled: Settled[] = [];
  for (const id of ids) {
    await new Promise<void>((resolve) => whenAtRest(resolve));
    if (!isWanted()) break;
    const one = isSettled(id) ? undefined : await settledFromStore(id);
    if (one !== undefined) settled.push(one);
    if (settled.length >= AT_ONCE) {
      putThoseThatHold(settled);
      settled = [];
    }
  }
  putThoseThatHold(settled);
}

function isSettled(id: string): boolean {
  const { standing } = summaries.peek().get(id) ?? {};
  return standing !== undefined && (standing.kit === undefined || standing.kit === kitMark());
}

/** Parts whose readings another window has changed, since when their chain was read last here. */
const changedElsewhere = new Set<string>();

onArrival((records) => {
  for (const record of records) {
    if (record.kind === 'inspection' || record.kind === 'work') changedElsewhere.add(record.part);
  }
});

async function settledFromStore(id: string): Promise<Settled | undefined> {
  changedElsewhere.delete(id);
  const before = summaries.peek().get(id);
  const part = parts.peek().get(id);
  const { records } = await loadChain(id);
  const links = oldestFirst(records);
  const standing = part && (await standingApart(latestInspection(links), part.entry));
  const holds = () =>
    parts.peek().get(id) === part &&
    chain.peek()?.part !== id &&
    summaries.peek().get(id) === before &&
    !changedElsewhere.has(id);
  return standing && { summary: summaryOf(id, standing), holds };
}

function putThoseThatHold(settled: readonly Settled[]): void {
  const those = settled.filter(({ holds }) => holds());
  if (those.length > 0) put(those.map(({ summary }) => summary));
}

/** The same as `standingOf`, waited for where sums or form have to be reckoned with. */
async function standingApart(
  last: InspectionRecord | undefined,
  entry: PartEntry,
): Promise<Standing | undefined> {
  if (last === undefined) return standingOf(last, entry);
  if (!(await isRead(last, entry))) return undefined;
  const flat = standingOf(last, entry, workOutFlat);
  if (flat !== undefined) return flat;
  const worked = await workOutApart(last, entry);
  return standingOf(last, entry, () => worked);
}

/** What the latest readings say; undefined while sums or form in them have yet to be reckoned with. */
export function standingOf(
  last: InspectionRecord | undefined,
  entry: PartEntry,
  work = workOut,
): Standing | undefined {
  const notFixed = linesOf(entry).length;
  if (last === undefined) return { probabilities: [], notFixed };
  const { answer, silence } = work(last, entry);
  if (silence === 'waiting') return undefined;
  const kit = last.closed === undefined ? { kit: kitMark() } : {};
  const read = { read: last.made, ...kit };
  if (answer === undefined) return { ...read, probabilities: [], notFixed };
  const findings = allFindings(answer);
  const fixed = findings.filter((finding) => finding.fixed);
  const said = saidByThisMethod(last);
  const known = fixed.map((finding) => {
    if (!isPending(finding)) return finding.probability;
    return said?.find(({ requirement }) => requirement === finding.requirement.id)?.found
      ?.probability;
  });
  const probabilities = known.filter((probability) => probability !== undefined);
  if (probabilities.length < known.length) return undefined;
  return { ...read, probabilities, notFixed: findings.length - fixed.length };
}

function summaryOf(part: string, standing: Standing): SummaryRecord {
  // What was found of comparators and rates still holds: a change of the chain would have taken it away.
  const found = summaries.peek().get(part)?.found;
  return { ...newRecord(), kind: 'summary', part, standing, ...(found && { found }) };
}

function put(changed: readonly SummaryRecord[]): void {
  keep(changed);
  showSummaries(changed);
}
