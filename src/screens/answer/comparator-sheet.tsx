import type { ComparatorAnswer } from '../../core/inspection/comparators';
import { expanded } from '../../core/statistics/coverage';
import { per100Millimetres } from '../../core/units/slope';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { pairName } from '../../words/faces';
import { withDoubt } from '../../words/numbers';

interface ComparatorSheetProps {
  readonly comparators: readonly ComparatorAnswer[];
  readonly inspection: InspectionRecord;
}

/** What turning the block round says of the comparator itself. */
export function ComparatorSheet({ comparators, inspection }: ComparatorSheetProps) {
  return (
    <section class="sheet" aria-labelledby="comparator-heading">
      <h3 id="comparator-heading">The comparator itself</h3>
      <dl class="facts">
        {comparators.map((comparator) => (
          <Comparator key={idOf(comparator)} comparator={comparator} inspection={inspection} />
        ))}
      </dl>
      <p class="soft small">± is the expanded uncertainty, for about 95 %.</p>
    </section>
  );
}

interface ComparatorProps {
  readonly comparator: ComparatorAnswer;
  readonly inspection: InspectionRecord;
}

function Comparator({ comparator, inspection }: ComparatorProps) {
  const { deviation } = shop.value.units;
  const faces = inspection.setups.find(({ id }) => id === idOf(comparator))?.faces;
  const onWhat = faces === undefined ? '' : ` (${pairName(faces)})`;
  const { estimate } = comparator;
  const isLean = comparator.kind === 'lean';
  const scale = isLean ? per100Millimetres : (value: number) => value;
  return (
    <>
      <dt>
        {isLean
          ? `The column leans, per 100 mm${onWhat}; plus reads more going up`
          : `On a truly square block it would show${onWhat}`}
      </dt>
      <dd>
        {estimate === undefined
          ? 'not fixed'
          : withDoubt(scale(estimate.value), scale(expanded(estimate)), deviation)}
      </dd>
    </>
  );
}

function idOf(comparator: ComparatorAnswer): string {
  return comparator.kind === 'zero' ? comparator.setting : comparator.column;
}
