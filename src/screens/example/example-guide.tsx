import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Face } from '../../core/part/faces';
import { reversal } from '../../core/readings/reversal';
import type { Worked } from '../../state/answers';
import {
  type GuideStep,
  guideStep,
  PLAYED,
  type ReadAgain,
  type ZeroFound,
} from '../../state/example-guide';
import { dismiss } from '../../state/plate-changes';
import { shop } from '../../state/shop';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Reversal } from '../../widgets/drawings/reversal';
import { ENTRY_DONE } from '../../widgets/number-fields';
import { deviation } from '../../words/numbers';
import { to } from '../paths';
import { TurnTheDial } from './turn-the-dial';

interface ExampleGuideProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
}

/** Leads through the invented example, one step at a time: what to type, and what it shows. */
export function ExampleGuide({ part, inspection, worked }: ExampleGuideProps) {
  const section = useRef<HTMLElement>(null);
  useDoneLeadsTo(section);
  return (
    <section class="note guide" aria-label="Try-out" ref={section}>
      <div class="stack" aria-live="polite">
        <Step inspection={inspection} step={guideStep(part, inspection, worked)} />
      </div>
      <div class="sheet-head">
        <span class="soft small">Try-out on an invented part</span>
        <button
          type="button"
          class="button button-quiet"
          onClick={() => dismiss(inspection, 'guide')}
        >
          Skip this
        </button>
      </div>
    </section>
  );
}

/** What the last reading has shown is looked at before the answer is. */
function useDoneLeadsTo(section: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const setup = section.current?.closest('.setup');
    const lead = (event: Event) => {
      event.stopPropagation();
      event.preventDefault();
      section.current?.scrollIntoView();
    };
    setup?.addEventListener(ENTRY_DONE, lead);
    return () => setup?.removeEventListener(ENTRY_DONE, lead);
  }, [section]);
}

const inWords = (micrometres: number) => deviation(micrometres, shop.value.units.deviation);

interface StepProps {
  readonly inspection: InspectionRecord;
  readonly step: GuideStep;
}

function Step({ inspection, step }: StepProps) {
  switch (step.kind) {
    case 'first side':
      return (
        <p>
          The comparator is set, and a micrometer has been over both sides. Type{' '}
          <b>{inWords(PLAYED.first.right)}</b> for the right side.
        </p>
      );
    case 'second side':
      return (
        <>
          <p>
            Swing round, the setting untouched, and type <b>{inWords(PLAYED.first.left)}</b> for the
            left side.
          </p>
          <p>One number says nothing yet: the comparator’s own zero and the lean are both in it.</p>
          <Reversal first={step.right} firstName="right" secondName="left" inWords={inWords} />
        </>
      );
    case 'zero falls out':
      return (
        <>
          <WhatFallsOut {...step} />
          {step.zero !== undefined && (
            <TurnTheDial {...step} inspection={inspection} zero={step.zero} />
          )}
          {step.zero !== undefined && <ToTheWork face={step.workFirst} />}
        </>
      );
    case 'read again':
      return step.micrometer ? (
        <p>
          Further down, tap <b>‘As last time’</b>.
        </p>
      ) : (
        <p>
          Wipe it, seat it, type <b>{inWords(PLAYED.again.right)}</b> for the right and{' '}
          <b>{inWords(PLAYED.again.left)}</b> for the left.
        </p>
      );
    case 'end':
      return <End {...step} />;
  }
}

/** How the zero comes out of two readings: the plain way only where the sides are parallel. */
function WhatFallsOut({ right, left, zero, isMean, assumed }: ZeroFound) {
  if (zero === undefined) {
    return (
      <p>
        Their mean is the zero only where both sides are parallel, and nothing tells that now: below
        stands what is missing.
      </p>
    );
  }
  if (isMean) {
    return (
      <p>
        <b>The zero falls out.</b> Both have it in them, and{' '}
        {assumed ? 'the sides are taken as parallel' : 'the sides were found parallel'}, so what one
        leans out the other leans in: their mean is the zero, and half their difference the lean.
      </p>
    );
  }
  return (
    <p>
      <b>The zero falls out.</b> It is not the mean of the two,{' '}
      {inWords(reversal(right, left).zero)}: the sides were found not parallel. With the taper taken
      out it is <b>{inWords(zero)}</b>.
    </p>
  );
}

/** What the advice under the answer begins with. */
function ToTheWork({ face }: { readonly face: Face | undefined }) {
  return face === undefined ? (
    <p>Further down stands that nothing need come off.</p>
  ) : (
    <p>Further down stands what to take off. There say ‘I work the {face}’.</p>
  );
}

function End({ right, left, zero, hasMoved, isIn }: ReadAgain) {
  return (
    <>
      {zero !== undefined && (
        <Reversal
          first={right}
          second={left}
          found={zero}
          firstName="right"
          secondName="left"
          inWords={inWords}
        />
      )}
      <p>
        <b>That is the whole job:</b> read both sides, take the lean off, read again.{' '}
        {zero !== undefined &&
          (hasMoved
            ? 'The zero is elsewhere, as after a turn of the dial: that changes nothing. '
            : 'The zero is where it was. ')}
        {isIn ? 'The lean is nearly gone.' : 'Some lean is left: below stands what to take off.'}
      </p>
      <a class="button button-main" href={to.bench()}>
        On to a part of your own
      </a>
    </>
  );
}
