import { byTime } from './order';
import type { Plan } from './plan';
import type { Plans } from './plans-for';

/** What the first way is to take least of. */
export type WayOrder = 'stock' | 'time';

/** The plans as one would choose among them. */
export interface Ways {
  /** Possible, unless nothing is. */
  readonly first: Plan;
  /** The others that do it. */
  readonly others: readonly Plan[];
  /** Single faces that do not do it alone. */
  readonly stopped: readonly Plan[];
}

/** The plans in the order of choice: by stock, or by time where all faces are worked the same way. */
export function waysOf({ best, single }: Plans, order: WayOrder): Ways {
  const bestIsSingle = best.steps.length < 2;
  const possible = single.filter((plan) => plan.possible);
  const all = bestIsSingle && possible.length > 0 ? possible : [best, ...possible];
  // Worked the same way, the time of a face goes with its wedge.
  const [first = best, ...others] = order === 'time' ? byTime(all, ({ wedge }) => wedge) : all;
  return { first, others, stopped: single.filter((plan) => !plan.possible) };
}
