import { Fragment } from 'preact';
import type { Estimate } from '../../core/adjustment/adjustment';
import { scaledEstimate } from '../../core/adjustment/scaled-estimate';
import type { Face } from '../../core/part/faces';
import { expanded, isWithinDoubt } from '../../core/statistics/coverage';
import { arcSeconds, per100Millimetres, perInch } from '../../core/units/slope';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { leanInWords } from '../../words/leans';
import { arcSecondsWithDoubt, size, withDoubt } from '../../words/numbers';
import { Help } from '../help/help';
import { Working } from './working';

/** What a slope comes to over a length; the one of the shop's own unit comes first. */
const PER_LENGTH = [
  ['Per 100 mm', per100Millimetres],
  ['Per inch', perInch],
] as const;

interface SideFactsProps {
  readonly face: Face;
  readonly base: Face;
  /** mm */
  readonly height: number;
  /** Out-of-square, µm/mm. */
  readonly estimate: Estimate;
  readonly inspection: InspectionRecord;
}

/** One face: which way it leans, and by how much in every way that the trade says it. */
export function SideFacts({ face, base, height, estimate, inspection }: SideFactsProps) {
  const { deviation, size: sizeUnit } = shop.value.units;
  const amount = Math.abs(estimate.value);
  const doubt = expanded(estimate);
  const over = (convert: (slope: number) => number) =>
    withDoubt(convert(amount), convert(doubt), deviation);
  return (
    <div class="stack">
      <p>
        <b>{leanInWords(face, base, estimate)}</b>
        {isWithinDoubt(estimate) && <span class="soft"> (smaller than the doubt)</span>}
      </p>
      <dl class="facts">
        <dt>Over its {size(height, sizeUnit)}</dt>
        <dd>{over((slope) => slope * height)}</dd>
        {(sizeUnit === 'in' ? [...PER_LENGTH].reverse() : PER_LENGTH).map(([name, convert]) => (
          <Fragment key={name}>
            <dt>{name}</dt>
            <dd>{over(convert)}</dd>
          </Fragment>
        ))}
        <dt>As an angle</dt>
        <dd>{arcSecondsWithDoubt(arcSeconds(amount), arcSeconds(doubt))}</dd>
      </dl>
      <Working
        result={scaledEstimate(estimate, height)}
        what={`How far the ${face} leans out over its height`}
        inspection={inspection}
      />
      <Help topics={['per 100 mm']} />
    </div>
  );
}
