import { allFindings, isPending } from '../../core/inspection/any-finding';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import { needOf } from '../../core/inspection/need';
import { typedShare } from '../../state/advice';
import { Fold } from '../../widgets/fold';
import { WaysToWork, type WaysToWorkProps } from './ways-to-work';

interface AdviceProps extends Omit<WaysToWorkProps, 'tentative'> {
  readonly answer: InspectionAnswer;
}

/** Whether anything is to come off, and then how. */
export function Advice(props: AdviceProps) {
  const { best } = props.plans;
  const { wedge, areFlat } = needOf(props.answer);
  if (wedge === 'not measured' && areFlat === undefined) return <NothingMeasured />;
  if (wedge === 'not measured') {
    return areFlat ? <p class="note">All that has been measured is in: leave it.</p> : null;
  }
  if (best.possible && best.steps.length === 0) {
    return (
      <p class="note">
        {areFlat === false ? 'No wedge: all else' : 'Nothing: all'} that has been measured is within{' '}
        {typedShare.value}&nbsp;% of what the drawing allows, its doubt included.
      </p>
    );
  }
  if (wedge === 'in') {
    const isSettled = !allFindings(props.answer).some(isPending);
    return (
      <>
        <p class="note">
          {isSettled
            ? `${areFlat === false ? 'All else' : 'All'} that has been measured is in: leave it.`
            : 'Working out what form does to the zones: a moment.'}
        </p>
        <Fold summary="To bring it closer all the same">
          <div class="stack">
            <WaysToWork {...props} tentative />
          </div>
        </Fold>
      </>
    );
  }
  return (
    <>
      {wedge === 'within doubt' && (
        <p class="note note-warning">
          The error is smaller than its doubt, so which edge is high is not sure. Read again before
          anything comes off.
        </p>
      )}
      <WaysToWork {...props} tentative={wedge !== 'sure'} />
    </>
  );
}

/** Said where the readings fix no line of the drawing. */
export function NothingMeasured() {
  return (
    <p class="note">Nothing to advise until a requirement of the drawing has been measured.</p>
  );
}
