import { useState } from 'preact/hooks';
import { reopenInspection } from '../../state/inspections';
import type { InspectionRecord } from '../../store/records';
import { TextField } from '../../widgets/text-field';

const USUAL_REASONS = ['A slip in typing', 'A reading was left out', 'It was read again'] as const;

/** Opens finished readings to put a slip right, once it is said why: what was finished is kept. */
export function OpenAgain({ inspection }: { readonly inspection: InspectionRecord }) {
  const [isAsking, ask] = useState(false);
  const [why, setWhy] = useState('');
  if (!isAsking) {
    return (
      <button type="button" class="button" onClick={() => ask(true)}>
        Open them again
      </button>
    );
  }
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        ask(false);
        setWhy('');
        reopenInspection(inspection, why.trim());
      }}
    >
      <p>What was finished stays on record as an earlier version.</p>
      <TextField
        id={`${inspection.id} why`}
        label="Why are they opened?"
        text={why}
        suggestions={USUAL_REASONS}
        onText={setWhy}
      />
      <div class="row">
        <button type="submit" class="button button-main">
          Open them, keep the earlier
        </button>
        <button type="button" class="button" onClick={() => ask(false)}>
          Leave them finished
        </button>
      </div>
    </form>
  );
}
