import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { INCH_STEP, isStepInQuestion } from '../../entry/step-in-question';
import { takeKitAtPlate } from '../../state/drawer';
import { kitName, setKit } from '../../state/kits';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { focusNextToFill, hasOwnKeypad } from '../../widgets/number-fields';
import { to } from '../paths';

interface KitInHandProps {
  readonly inspection: InspectionRecord;
  /** What stands in the row of the heading as well. */
  readonly children: ComponentChildren;
}

/** The kit in use with the way to its figures, and the other kits at one tap. */
export function KitInHand({ inspection, children }: KitInHandProps) {
  const { part, id, closed } = inspection;
  const others = shop.value.otherKits ?? [];
  const [taken, setTaken] = useState(false);
  const take = (index: number) => {
    takeKitAtPlate(index, inspection);
    setTaken(true);
  };
  return (
    <>
      <div class="sheet-head">
        <h2>Readings</h2>
        {children}
        <a class="button button-quiet" href={to.kit(to.plate(part, id))}>
          {kitName.value}
        </a>
      </div>
      {closed === undefined && others.length > 0 && (
        <fieldset class="row">
          <legend class="soft small">Read on with another kit</legend>
          {others.map(({ name }, index) => (
            <button
              key={`${index} ${name}`}
              type="button"
              class="button"
              onClick={() => take(index)}
            >
              {name.trim() || `Kit at place ${index + 1}`}
            </button>
          ))}
        </fieldset>
      )}
      {closed === undefined && <StepOfDial />}
      {taken && (
        <p class="note small" role="status">
          From now on read with {kitName.value}. What had been read before stays with what it was
          read with: each sheet says which.
        </p>
      )}
    </>
  );
}

/** Asks once, where readings are in parts of an inch, whether the dial steps by those as well. */
function StepOfDial() {
  const { kit, units } = shop.value;
  const isAsked = isStepInQuestion(kit, units.deviation);
  const isAnswered = useRef(false);
  // The question goes with the focus in it; with fingers, the keypad would lie over what is still to be read.
  useLayoutEffect(() => {
    if (isAnswered.current && !isAsked && !hasOwnKeypad()) focusNextToFill(null);
    isAnswered.current = false;
  }, [isAsked]);
  if (!isAsked) return null;
  return (
    <div class="note stack small">
      <p>{kitName.value} has a dial that steps by 1 µm: the ± is reckoned with that.</p>
      <button
        type="button"
        class="button"
        onClick={() => {
          isAnswered.current = true;
          setKit({ ...kit, indicatorResolution: INCH_STEP });
        }}
      >
        Mine steps by 1 tenth
      </button>
    </div>
  );
}
