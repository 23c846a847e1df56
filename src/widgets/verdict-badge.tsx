import type { Verdict } from '../core/verdict/conformity';
import { VERDICT_LABELS } from '../words/verdicts';
import { DrawnSign } from './drawn-sign';

const CLASSES: Readonly<Record<Verdict, string>> = {
  in: 'verdict-in',
  out: 'verdict-out',
  'too close to call': 'verdict-close',
};

/** The verdict by word, sign and colour, so that none of them has to be seen alone. */
export function VerdictBadge({ verdict }: { readonly verdict: Verdict }) {
  return (
    // Another verdict arrives anew: see styles/motion.css.
    <span key={verdict} class={`verdict ${CLASSES[verdict]}`}>
      <DrawnSign sign={verdict} />
      {VERDICT_LABELS[verdict]}
    </span>
  );
}
