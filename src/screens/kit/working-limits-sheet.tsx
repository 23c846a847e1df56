import { fieldKey } from '../../entry/field-keys';
import { readMethodLimits } from '../../entry/method-limits';
import { SHARE_RANGE, share, typedShare } from '../../state/advice';
import { methodLimits, setMethodLimits, setShare } from '../../state/shop-settings';
import { LengthField } from '../../widgets/length-field';
import { NumberField } from '../../widgets/number-field';
import { PER_CENT } from '../../words/numbers';
import { useCameFrom } from '../came-from';
import { to } from '../paths';

const METHOD_LIMITS = [
  ['mostLapped', 'Most that is lapped by hand'],
  ['mostGround', 'Most that is ground'],
  ['lappedSide', 'Largest square face that is lapped by hand: its side'],
] as const;

/** How far a plan goes, and how fast the shop cuts. */
export function WorkingLimitsSheet() {
  const message = `Between ${SHARE_RANGE.least} and ${SHARE_RANGE.most}${PER_CENT}`;
  const from = useCameFrom();
  const { problems } = readMethodLimits(methodLimits.value);
  return (
    <section class="sheet" aria-labelledby="share-heading">
      <h2 id="share-heading">How far to work</h2>
      <NumberField
        field="share"
        label="A plan brings each requirement to so much of what the drawing allows, its doubt included"
        text={typedShare.value}
        unit="%"
        problem={share.value === undefined ? { kind: 'wrong', message } : undefined}
        onText={setShare}
      />
      {METHOD_LIMITS.map(([item, label]) => (
        <LengthField
          key={item}
          field={fieldKey.methodLimit(item)}
          label={label}
          typed={methodLimits.value[item]}
          problems={problems}
          onTyped={(typed) => setMethodLimits({ ...methodLimits.value, [item]: typed })}
        />
      ))}
      <p class="soft small">These three begin as common practice, without a source.</p>
      <a class="button" href={to.rates(from)}>
        How fast your papers cut
      </a>
      <a class="button" href={to.comparators(from)}>
        Whether the comparators have moved
      </a>
    </section>
  );
}
