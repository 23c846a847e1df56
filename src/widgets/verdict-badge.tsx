import type { Verdict } from '../core/verdict/conformity';
import { VERDICT_LABELS } from '../words/verdicts';

/** Drawn, not lettered: not every font has them. */
const SIGNS: Readonly<Record<Verdict, string>> = {
  in: 'M2 9L6 13L14 3',
  out: 'M3 3L13 13M13 3L3 13',
  'too close to call': 'M2 6.5Q5 2.5 8 5.5T14 4.5M2 12.5Q5 8.5 8 11.5T14 10.5',
};
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
      <svg class="verdict-sign" viewBox="0 0 16 16" aria-hidden="true">
        <path d={SIGNS[verdict]} />
      </svg>
      {VERDICT_LABELS[verdict]}
    </span>
  );
}
