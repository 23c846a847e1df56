import type { Verdict } from '../core/verdict/conformity';
import { VERDICT_LABELS } from '../words/verdicts';

const SIGNS: Readonly<Record<Verdict, string>> = { in: '✓', out: '✕', 'too close to call': '≈' };
const CLASSES: Readonly<Record<Verdict, string>> = {
  in: 'verdict-in',
  out: 'verdict-out',
  'too close to call': 'verdict-close',
};

/** The verdict by word, sign and colour, so that none of them has to be seen alone. */
export function VerdictBadge({ verdict }: { readonly verdict: Verdict }) {
  return (
    <span class={`verdict ${CLASSES[verdict]}`}>
      <span class="verdict-sign" aria-hidden="true">
        {SIGNS[verdict]}
      </span>
      {VERDICT_LABELS[verdict]}
    </span>
  );
}
