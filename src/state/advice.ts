import { computed } from '@preact/signals';
import type { Adjustment } from '../core/adjustment/adjustment';
import { type Advice, advise, nextOf } from '../core/inspection/advise';
import { readNumber } from '../entry/number';
import type { Worked } from './answers';
import { shop } from './shop';
import { level } from './shop-settings';

/** Per cent of a tolerance that a plan may be asked to leave at most. */
export const SHARE_RANGE = { least: 5, most: 100 } as const;

const USUAL_SHARE = '50';

/** How much of each tolerance a plan may leave, in per cent, as typed. */
export const typedShare = computed(() => shop.value.share ?? USUAL_SHARE);

/** The same as a number from 0 to 1; undefined while what is typed is none. */
export const share = computed<number | undefined>(() => {
  const read = readNumber(typedShare.value);
  if (!read.ok || read.value < SHARE_RANGE.least || read.value > SHARE_RANGE.most) return undefined;
  return read.value / 100;
});

/** There are no plans while what is typed for the share is none. */
interface AdviceSoFar extends Pick<Advice, 'next' | 'pieces'> {
  readonly plans: Advice['plans'] | undefined;
}

/** Readings that are adjusted have one advice, whoever asks. */
const known = new WeakMap<Adjustment, { readonly asked: string; readonly advice: AdviceSoFar }>();

/** What to read next and what to take off; undefined where there is no answer. */
export function adviceOn({ part, answer }: Worked): AdviceSoFar | undefined {
  const demand = { level: level.value, share: share.value };
  if (part === undefined || answer === undefined) return undefined;
  if (demand.level === undefined) return undefined;
  // Form that has been taken in since changes the chances, and nothing else that advice hangs on.
  const chances = answer.findings.map((finding) => (finding.fixed ? finding.probability : ''));
  const asked = [demand.level, demand.share, ...chances].join(' ');
  const kept = known.get(answer.adjustment);
  if (kept?.asked === asked) return kept.advice;
  const advice =
    demand.share === undefined
      ? { next: nextOf(part, answer), plans: undefined, pieces: [] }
      : advise(part, answer, { level: demand.level, share: demand.share });
  known.set(answer.adjustment, { asked, advice });
  return advice;
}
