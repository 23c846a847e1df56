import { nowAfter, putShop, shop } from './shop';

/*
 * What came before no longer counts: a rate is learned anew, a comparator was set anew.
 */

/** Lets the rate of a way of working be learned from what is yet to come after `last`, its last pass. */
export function learnAnew(way: string, last = ''): void {
  putShop({ learnedSince: { ...shop.value.learnedSince, [way]: nowAfter(last) } });
}

/** Lets what came before count again. */
export function takeBackLearningAnew(way: string): void {
  const { [way]: _, ...others } = shop.value.learnedSince ?? {};
  putShop({ learnedSince: others });
}

/** Lets a new run begin for a comparator after `last`, its last check: it was set anew. */
export function setAnew(comparator: string, last = ''): void {
  const before = shop.value.setAnew ?? {};
  const times = [...(before[comparator] ?? []), nowAfter(last)];
  putShop({ setAnew: { ...before, [comparator]: times } });
}

/** Takes back that it was set anew the last time. */
export function takeBackSetAnew(comparator: string): void {
  const { [comparator]: times = [], ...others } = shop.value.setAnew ?? {};
  const rest = times.slice(0, -1);
  putShop({ setAnew: rest.length === 0 ? others : { ...others, [comparator]: rest } });
}

/** When something was begun anew last; empty where nothing was. What is read or done after it is dated after it, too. */
export function lastBegunAnew(): string {
  const { learnedSince = {}, setAnew = {} } = shop.peek();
  const times = [...Object.values(learnedSince), ...Object.values(setAnew).flat()];
  return times.sort().at(-1) ?? '';
}
