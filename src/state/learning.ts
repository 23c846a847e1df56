import { computed, signal } from '@preact/signals';
import { type Drift, driftOf } from '../core/correction/rates/drift';
import { type LearnedRate, learnRate } from '../core/correction/rates/learn-rate';
import type { Pass } from '../core/correction/rates/pass';
import { priorRate } from '../core/correction/rates/prior';
import type { ArithmeticSoFar } from '../entry/arithmetic';
import { type WayOfWorking, wayName, workKindOf } from '../entry/way-of-working';
import type { PartRecord, WorkRecord } from '../store/records';
import { loadChain } from '../store/shop-store';
import { agreeOn, onArrival } from './agreed';
import { arithmetic } from './arithmetic/arithmetic';
import { chain, drawnChain, type Link } from './chain';
import { oldestFirst } from './oldest-first';
import { workOutcome } from './outcomes';
import { keep } from './saving';
import { changedNow, now, parts, shop } from './shop';
import { putWork } from './work-log';

/** A piece of work that tells how fast a way of working cuts, and where it is on record. */
export interface LearnedPass extends Pass {
  readonly work: WorkRecord;
  readonly part: PartRecord;
  readonly way: WayOfWorking;
  /** False where it is left out, or from before the rate was begun anew. */
  readonly counts: boolean;
}

/** Passes of the parts that are not open, by part. */
const gathered = signal<ReadonlyMap<string, readonly LearnedPass[]>>(new Map());

/** Passes of the part that is open: they follow what is typed. */
const ofOpenPart = computed<readonly LearnedPass[]>(() => {
  const part = parts.value.get(drawnChain.value?.part ?? '');
  return isThere(part) ? passesOf(part, drawnChain.value?.links ?? []) : [];
});

function isThere(part: PartRecord | undefined): part is PartRecord {
  return part !== undefined && part.removed === undefined;
}

/**
 * Every pass of the shop, oldest first; those of other parts once they have been gathered. A part is
 * removed because it was a mistake or a trial: it teaches nothing until it is put back.
 */
export const passes = computed<readonly LearnedPass[]>(() => {
  const others = [...gathered.value].filter(
    ([part]) => part !== drawnChain.value?.part && isThere(parts.value.get(part)),
  );
  return [...others.flatMap(([, some]) => some), ...ofOpenPart.value]
    .map((pass) => ({ ...pass, counts: isCounted(pass) }))
    .sort((a, b) => a.work.made.localeCompare(b.work.made));
});

let gathering = false;

/** Gathers the passes of all parts, one part at a time, so that nothing waits for it. */
export async function gatherPasses(): Promise<void> {
  if (gathering) return;
  gathering = true;
  try {
    let sums: ArithmeticSoFar;
    do {
      sums = arithmetic.peek();
      await gather();
      // Readings with sums may have been met before those could be worked out.
    } while (arithmetic.peek() !== sums);
  } catch (error) {
    // The rate is then learned from fewer passes, which its doubt tells.
    console.error(error);
  } finally {
    gathering = false;
  }
}

async function gather(): Promise<void> {
  for (const part of parts.value.values()) {
    if (part.example || part.id === chain.value?.part) continue;
    const { records } = await loadChain(part.id);
    if (part.id === chain.value?.part) continue;
    const links = oldestFirst(records);
    const own = passesOf(part, links);
    for (const { work } of own) agreeOn(work);
    gathered.value = new Map(gathered.value).set(part.id, own);
  }
}

onArrival((records) => {
  for (const record of records) if (record.kind === 'work') putGathered(record);
});

/** The passes that a part's chain tells of: work with its amount, measured before and after. */
function passesOf(part: PartRecord, links: readonly Link[]): readonly LearnedPass[] {
  // An invented part would teach the shop invented rates.
  if (part.example) return [];
  return links.flatMap((link) => {
    if (link.kind !== 'work') return [];
    const done = workOutcome(link, links, part.entry);
    if (done?.outcome === undefined || done.rate === undefined) return [];
    const way = wayOf(link, part);
    return [{ ...done.outcome, amount: done.rate.amount, work: link, part, way, counts: true }];
  });
}

function isCounted({ work, way }: LearnedPass): boolean {
  const since = shop.value.learnedSince?.[wayName(way)];
  return work.notLearned === undefined && (since === undefined || work.made > since);
}

/** Lets a pass teach nothing. */
export function leaveOut({ work }: LearnedPass): void {
  put({ ...work, notLearned: { at: now() } });
}

/** Lets it teach again. */
export function countAgain({ work: { notLearned: _, ...work } }: LearnedPass): void {
  put(work);
}

/** The work may be of a part that is not open. */
function put(work: WorkRecord): void {
  if (chain.value?.part === work.part) {
    putWork(work);
    return;
  }
  const changed = changedNow(work);
  keep([changed]);
  putGathered(changed);
}

function putGathered(work: WorkRecord): void {
  const own = gathered.value
    .get(work.part)
    ?.map((pass) => (pass.work.id === work.id ? { ...pass, work } : pass));
  if (own !== undefined) gathered.value = new Map(gathered.value).set(work.part, own);
}

/** The way that a piece of work was done. */
export function wayOf(work: WorkRecord, part: PartRecord): WayOfWorking {
  const { abrasive, method, amount } = work;
  return { material: part.entry.material, abrasive, method, unit: amount.unit };
}

/** How most hands would begin, where the shop has not lapped this material before. */
const FIRST_WAY = { abrasive: 'P400 paper', method: 'lap', unit: 'seconds' } as const;

/** The way that this material was last lapped in the shop. */
export function usualWay(part: PartRecord): WayOfWorking {
  const { material } = part.entry;
  const same = (pass: LearnedPass) =>
    pass.way.method === 'lap' && wayName({ ...pass.way, material }) === wayName(pass.way);
  return passes.value.findLast(same)?.way ?? { ...FIRST_WAY, material };
}

/** How fast `way` cuts, from the passes that count but for the work `without`. */
export function learnedRate(way: WayOfWorking, without?: string): LearnedRate {
  const name = wayName(way);
  const own = passes.value.filter(
    (pass) => pass.counts && wayName(pass.way) === name && pass.work.id !== without,
  );
  return rateFrom(own, way);
}

/** Whether the passes of `way` that count become slower or faster; undefined while they are too few to tell. */
export function driftOfWay(way: WayOfWorking): Drift | undefined {
  const name = wayName(way);
  const own = passes.value.filter((pass) => pass.counts && wayName(pass.way) === name);
  return driftOf(own, learnedRate(way));
}

/** Learning takes integrals: the same passes are not learned from twice. */
const learned = new Map<string, LearnedRate>();
const KEPT = 50;

function rateFrom(own: readonly LearnedPass[], way: WayOfWorking): LearnedRate {
  const known = own.map(({ amount, wedge, standard, degreesOfFreedom }) => {
    return { amount, wedge, standard, degreesOfFreedom };
  });
  const kind = workKindOf(way);
  // Infinite degrees become null: they are the only ones that do.
  const key = JSON.stringify([kind, known]);
  const kept = learned.get(key);
  if (kept !== undefined) return kept;
  const rate = learnRate(known, priorRate(kind));
  learned.set(key, rate);
  const [oldest] = learned.keys();
  if (learned.size > KEPT && oldest !== undefined) learned.delete(oldest);
  return rate;
}
