import { scaledEstimate } from '../../core/adjustment/scaled-estimate';
import type { ComparatorAnswer } from '../../core/inspection/comparators';
import { expanded } from '../../core/statistics/coverage';
import { isTurned } from '../../entry/read-with';
import type { SetupEntry } from '../../entry/setup-entry';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { pairName } from '../../words/faces';
import { LEAN_OVER } from '../../words/leans';
import { withDoubt } from '../../words/numbers';
import { Working } from './working';

interface ComparatorSheetProps {
  readonly comparators: readonly ComparatorAnswer[];
  readonly inspection: InspectionRecord;
}

/** What turning the block round says of the comparator itself. */
export function ComparatorSheet({ comparators, inspection }: ComparatorSheetProps) {
  return (
    <section class="sheet" aria-labelledby="comparator-heading">
      <h3 id="comparator-heading">The comparator itself</h3>
      {comparators.map((comparator) => (
        <Comparator key={idOf(comparator)} comparator={comparator} inspection={inspection} />
      ))}
      <p class="soft small">± is the expanded uncertainty, for about 95&nbsp;%.</p>
    </section>
  );
}

interface ComparatorProps {
  readonly comparator: ComparatorAnswer;
  readonly inspection: InspectionRecord;
}

function Comparator({ comparator, inspection }: ComparatorProps) {
  const { deviation, size } = shop.value.units;
  const over = LEAN_OVER[size];
  const setup = inspection.setups.find(({ id }) => id === idOf(comparator));
  const onWhat = setup === undefined ? '' : ` (${setupInWords(setup)})`;
  const isLean = comparator.kind === 'lean';
  const { estimate } = comparator;
  const result = estimate && scaledEstimate(estimate, isLean ? over.length : 1);
  return (
    <div class="stack">
      <dl class="facts">
        <dt>
          {isLean
            ? `The column leans, ${over.name}${onWhat}; plus reads more going up`
            : `On a truly square block it would show${onWhat}`}
        </dt>
        <dd>
          {result === undefined
            ? 'not fixed'
            : withDoubt(result.value, expanded(result), deviation)}
        </dd>
      </dl>
      {result !== undefined && <Working result={result} what="This" inspection={inspection} />}
    </div>
  );
}

/** Which pair was read on which base, with which comparator, and whether its signs are turned. */
function setupInWords(setup: SetupEntry): string {
  const name = 'instrument' in setup ? setup.instrument?.name.trim() : undefined;
  const turned = isTurned(setup) ? 'sign turned: plus is plunger pushed in' : undefined;
  const stand = 'base' in setup ? ` on the ${setup.base}` : '';
  const pair = `${pairName(setup.faces)}${stand}`;
  return [pair, name, turned].filter(Boolean).join('; ');
}

function idOf(comparator: ComparatorAnswer): string {
  return comparator.kind === 'zero' ? comparator.setting : comparator.column;
}
