import { foundOf, rangeOf } from '../../core/inspection/found';
import { expanded } from '../../core/statistics/coverage';
import type { Change, WorkOutcome } from '../../state/outcomes';
import { shop } from '../../state/shop';
import type { WorkRecord } from '../../store/records';
import { BeforeAfter } from '../../widgets/drawings/before-after';
import { requirementName } from '../../words/faces';
import { foundInWords, deviation as shown, withDoubt } from '../../words/numbers';
import { IN_DOUBT_IN_WORDS, rateInWords, TAKEN_OVER_IN_WORDS } from '../../words/work';

interface OutcomeFactsProps {
  readonly outcome: WorkOutcome;
  readonly work: WorkRecord;
}

/** What was to become of each requirement and what did, what came off, and how fast. */
export function OutcomeFacts({ outcome, work }: OutcomeFactsProps) {
  const { changes, advised, outcome: done, takenOver, inDoubt, rate } = outcome;
  const { deviation } = shop.value.units;
  return (
    <>
      {changes.map((change) => (
        <ChangeFacts key={change.before.requirement.id} change={change} />
      ))}
      <dl class="facts">
        <dt>Wedge that was to come off the {work.face}</dt>
        <dd>{shown(advised, deviation)}</dd>
        <dt>Wedge that came off</dt>
        <dd>
          {done === undefined
            ? 'not told by these readings'
            : withDoubt(done.wedge, expanded(done), deviation)}
        </dd>
        {rate !== undefined && (
          <>
            <dt>Rate</dt>
            <dd>{rateInWords(rate, work.amount.unit, deviation)}</dd>
          </>
        )}
      </dl>
      {inDoubt && <p class="note">{IN_DOUBT_IN_WORDS}</p>}
      {done !== undefined && takenOver && <p class="soft small">{TAKEN_OVER_IN_WORDS}</p>}
    </>
  );
}

/** One requirement: before, what was predicted, and after. */
function ChangeFacts({ change }: { readonly change: Change }) {
  const { before, after, predicted } = change;
  const { deviation } = shop.value.units;
  const bars = [
    { name: 'Before', finding: before },
    { name: 'After', finding: after },
  ].map(({ name, finding }) => ({
    name,
    value: foundOf(finding).value,
    ...rangeOf(foundOf(finding)),
    text: foundInWords(foundOf(finding), deviation),
    verdict: finding.verdict,
  }));
  const name = requirementName(before.requirement);
  const expectedText = shown(predicted.width, deviation);
  return (
    <div class="stack">
      <h4>{name}</h4>
      <BeforeAfter
        limit={before.requirement.tolerance}
        limitText={shown(before.requirement.tolerance, deviation)}
        items={bars}
        label={`${name}: before ${bars[0]?.text}, after ${bars[1]?.text}; ${expectedText} was to be left`}
      />
      <p class="soft small">{expectedText} was to be left, had exactly the advised come off.</p>
    </div>
  );
}
