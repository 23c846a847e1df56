import { useState } from 'preact/hooks';
import { typeIntoExample } from '../../state/example-guide';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { Reversal } from '../../widgets/drawings/reversal';
import { deviation } from '../../words/numbers';

interface TurnTheDialProps {
  readonly inspection: InspectionRecord;
  /** What the two sides showed, µm. */
  readonly right: number;
  readonly left: number;
  /** The comparator's zero, µm. */
  readonly zero: number;
}

/** How far the dial can be turned, either way, µm. */
const FAR = 20;

/** A dial to turn: both readings go along with it, and what they stand apart stays. */
export function TurnTheDial({ inspection, right, left, zero }: TurnTheDialProps) {
  const [turned, turn] = useState(0);
  const inWords = (micrometres: number) => deviation(micrometres, shop.value.units.deviation);
  const typeThem = () => {
    typeIntoExample(inspection, { right: right + turned, left: left + turned });
    turn(0);
  };
  return (
    <>
      <Reversal
        first={right}
        second={left}
        found={zero}
        turned={turned}
        firstName="right"
        secondName="left"
        inWords={inWords}
      />
      <label class="field" for="turn-the-dial">
        Turn the dial of the indicator
      </label>
      <input
        id="turn-the-dial"
        class="slide"
        type="range"
        min={-FAR}
        max={FAR}
        step="1"
        value={turned}
        aria-valuetext={`by ${inWords(turned)}`}
        onInput={(event) => turn(Number(event.currentTarget.value))}
      />
      <p aria-live="polite">
        Turned by {inWords(turned)}: right {inWords(right + turned)}, left {inWords(left + turned)}.{' '}
        <b>The lean stays.</b>
      </p>
      <button type="button" class="button" disabled={turned === 0} onClick={typeThem}>
        Type these in: the answer stays
      </button>
    </>
  );
}
