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

/** One face less to set up and work is worth this part of the stock: common practice, no source. */
const ONE_FACE_LESS = 0.01;

/**
 * The plans in the order of choice: by stock, a single face before several that hardly take less; or by
 * time where all faces are worked the same way.
 */
export function waysOf({ best, single }: Plans, order: WayOrder): Ways {
  const bestIsSingle = best.steps.length < 2;
  const possible = single.filter((plan) => plan.possible);
  const takesClearlyMore = ({ volume }: Plan) => volume * (1 - ONE_FACE_LESS) > best.volume;
  const all =
    bestIsSingle && possible.length > 0
      ? possible
      : [
          ...possible.filter((plan) => !takesClearlyMore(plan)),
          best,
          ...possible.filter(takesClearlyMore),
        ];
  // Worked the same way, the time of a face goes with its wedge.
  const [first = best, ...others] = order === 'time' ? byTime(all, ({ wedge }) => wedge) : all;
  return { first, others, stopped: single.filter((plan) => !plan.possible) };
}
