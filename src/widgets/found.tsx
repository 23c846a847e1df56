import type { Found as Figure } from '../core/inspection/found';
import type { LengthUnit } from '../core/units/length';
import type { Verdict } from '../core/verdict/conformity';
import { deviationNumber } from '../words/numbers';
import { VerdictBadge } from './verdict-badge';

interface FoundProps extends Figure {
  readonly unit: LengthUnit;
  /** Left out while there is none yet. */
  readonly verdict: Verdict | undefined;
}

const CLASSES: Readonly<Record<Verdict, string>> = {
  in: 'found found-in',
  out: 'found found-out',
  'too close to call': 'found found-close',
};

/** A number with its doubt on the colour of its verdict, to be read at arm's length. */
export function Found({ value, doubt, unit, verdict }: FoundProps) {
  return (
    // Another verdict arrives anew: see styles/motion.css.
    <div key={verdict} class={verdict === undefined ? 'found' : CLASSES[verdict]}>
      <p class="big-number">
        {deviationNumber(value, unit)}{' '}
        <span>
          {'expanded' in doubt
            ? `± ${deviationNumber(doubt.expanded, unit)} ${unit}`
            : `${unit}, ${deviationNumber(doubt.low, unit)} to ${deviationNumber(doubt.high, unit)}`}
        </span>
      </p>
      {verdict !== undefined && <VerdictBadge verdict={verdict} />}
    </div>
  );
}
