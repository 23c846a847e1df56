import { computed } from '@preact/signals';
import { type Drift, driftOf } from '../core/correction/rates/drift';
import { type LearnedRate, learnRate } from '../core/correction/rates/learn-rate';
import { priorRate } from '../core/correction/rates/prior';
import { groupedBy } from '../core/grouped-by';
import { type WayOfWorking, wayName, workKindOf } from '../entry/way-of-working';
import type { FoundPass, PassWork } from '../store/found';
import { workKey } from '../store/keys';
import type { PartRecord, WorkRecord } from '../store/records';
import { readAt } from '../store/shop-store';
import { agreeOn, onArrival } from './agreed';
import { chain, drawnChain } from './chain';
import { found } from './found';
import { passIn } from './found-in';
import { inOrderOf } from './oldest-first';
import { keep, untilSaved } from './saving';
import { changedNow, newRecord, now, parts, shop } from './shop';
import { unsettled } from './summaries';
import { putWork } from './work-log';

/** A piece of work that tells how fast a way of working cuts, and where it is on record. */
export interface LearnedPass extends FoundPass {
  readonly part: PartRecord;
  readonly way: WayOfWorking;
  /** False where it is left out, or from before the rate was begun anew. */
  readonly counts: boolean;
}

/** Passes of the part that is open: they follow what is typed. */
const ofOpenPart = computed<readonly FoundPass[]>(() => {
  const { part: id, links } = drawnChain.value ?? { part: '', links: [] };
  const part = parts.value.get(id);
  // An invented part would teach the shop invented rates.
  if (part === undefined || part.example) return [];
  return links.flatMap((link) => (link.kind === 'work' ? passIn(link, links, part.entry) : []));
});

/**
 * Every pass of the shop, oldest first; those of other parts once they have been gathered. A part is
 * removed because it was a mistake or a trial: it teaches nothing until it is put back.
 */
export const passes = computed<readonly LearnedPass[]>(() => {
  const open = drawnChain.value?.part ?? '';
  const all = new Map([...found.value].map(([part, { passes: own }]) => [part, own]));
  const learned = [...all.set(open, ofOpenPart.value)].flatMap(([id, own]) => {
    const part = parts.value.get(id);
    return part === undefined || part.removed !== undefined
      ? []
      : own.map((pass) => learnedFrom(pass, part));
  });
  return inOrderOf(learned, ({ work }) => work.made);
});

function learnedFrom(pass: FoundPass, part: PartRecord): LearnedPass {
  const way = wayOf(pass.work, part);
  const { notLearned, made } = pass.work;
  const since = shop.value.learnedSince?.[wayName(way)];
  const counts = notLearned === undefined && (since === undefined || made > since);
  return { ...pass, part, way, counts };
}

/** The passes of each way of working by its name. */
const passesByWay = computed(() => groupedBy(passes.value, ({ way }) => wayName(way)));

/** The passes of a way of working, oldest first. */
export function passesOf(way: WayOfWorking): readonly LearnedPass[] {
  return passesByWay.value.get(wayName(way)) ?? [];
}

/** The ways of working that there is a pass of. */
export const learnedWays = computed<readonly WayOfWorking[]>(() =>
  [...passesByWay.value.values()].flatMap((own) => own.at(-1)?.way ?? []),
);

onArrival((records) => {
  for (const record of records) if (record.kind === 'work') putFound(record);
});

/** Lets a pass teach nothing. */
export function leaveOut({ work }: LearnedPass): Promise<void> {
  return put(work, (record) => ({ ...record, notLearned: { at: now() } }));
}

/** Lets it teach again. */
export function countAgain({ work }: LearnedPass): Promise<void> {
  return put(work, ({ notLearned: _, ...record }) => record);
}

/** The work may be of a part that is not open: then its record is on the disk alone. */
async function put(
  { id, part }: PassWork,
  change: (work: WorkRecord) => WorkRecord,
): Promise<void> {
  if (putInChain(id, part, change)) return;
  await untilSaved();
  const [work] = await readAt([workKey(part, id)]);
  // Its part may have been opened meanwhile.
  if (work?.kind !== 'work' || putInChain(id, part, change)) return;
  agreeOn(work);
  const changed = changedNow(change(work));
  keep([changed, ...unsettled(part, newRecord())]);
  putFound(changed);
}

/** False where the part is not open. */
function putInChain(id: string, part: string, change: (work: WorkRecord) => WorkRecord): boolean {
  const open = chain.peek();
  if (open?.part !== part) return false;
  const work = open.links.find((link) => link.id === id);
  if (work?.kind === 'work') putWork(change(work));
  return true;
}

function putFound({ id, part, notLearned }: WorkRecord): void {
  const known = found.peek().get(part);
  if (known === undefined) return;
  const own = known.passes.map((pass): FoundPass => {
    if (pass.work.id !== id) return pass;
    const { notLearned: _, ...work } = pass.work;
    return { ...pass, work: { ...work, ...(notLearned && { notLearned }) } };
  });
  found.value = new Map(found.peek()).set(part, { ...known, passes: own });
}

/** The way that a piece of work was done. */
export function wayOf(work: PassWork, part: PartRecord): WayOfWorking {
  const { abrasive, method, amount } = work;
  return { material: part.entry.material, abrasive, method, unit: amount.unit };
}

/** How most hands would begin, where the shop has not lapped this material before. */
const FIRST_WAY = { abrasive: 'P400 paper', method: 'lap', unit: 'seconds' } as const;

/** The way that this material was last lapped in the shop. */
export function usualWay(part: PartRecord): WayOfWorking {
  const { material } = part.entry;
  const isSame = (way: WayOfWorking) =>
    way.method === 'lap' && wayName({ ...way, material }) === wayName(way);
  const latest = learnedWays.value
    .filter(isSame)
    .flatMap((way) => passesOf(way).at(-1) ?? [])
    .reduce<LearnedPass | undefined>(
      (one, other) => (one === undefined || other.work.made >= one.work.made ? other : one),
      undefined,
    );
  return latest?.way ?? { ...FIRST_WAY, material };
}

/** How fast `way` cuts, from the passes that count but for the work `without`. */
export function learnedRate(way: WayOfWorking, without?: string): LearnedRate {
  const own = passesOf(way).filter(({ counts, work }) => counts && work.id !== without);
  return rateFrom(own, way);
}

/** Whether the passes of `way` that count become slower or faster; undefined while they are too few to tell. */
export function driftOfWay(way: WayOfWorking): Drift | undefined {
  const own = passesOf(way).filter(({ counts }) => counts);
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
