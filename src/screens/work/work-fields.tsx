import { fieldKey } from '../../entry/field-keys';
import { readCount } from '../../entry/read-count';
import { ownAbrasives } from '../../state/drawer';
import { changeWork } from '../../state/work-log';
import type { WorkRecord } from '../../store/records';
import { Choice } from '../../widgets/choice';
import { NumberField } from '../../widgets/number-field';
import { TextField } from '../../widgets/text-field';

const METHODS = [
  ['lap', 'Lapping'],
  ['grind', 'Grinding'],
  ['machine', 'Machining'],
  ['scrape', 'Scraping'],
] as const;

const AMOUNTS = [
  ['seconds', 'seconds'],
  ['strokes', 'strokes'],
] as const;

/** Kinds of abrasive as the trade names them; anything else may be typed. */
const USUAL_ABRASIVES = [
  'P320 paper',
  'P400 paper',
  'P600 paper',
  'P1000 paper',
  'Lapping compound',
];

/** What was done, written down. */
export function WorkFields({ work }: { readonly work: WorkRecord }) {
  const change = (changed: Partial<WorkRecord>) =>
    changeWork(work, (now) => ({ ...now, ...changed }));
  const changeAmount = (changed: Partial<WorkRecord['amount']>) =>
    changeWork(work, (now) => ({ ...now, amount: { ...now.amount, ...changed } }));
  return (
    <section class="sheet" aria-labelledby="done-heading">
      <h2 id="done-heading">What was done</h2>
      <Choice
        name="method"
        legend="Way of working"
        options={METHODS}
        chosen={work.method}
        onChoose={(method) => change({ method })}
      />
      <TextField
        id="abrasive"
        label="Abrasive, wheel or tool"
        text={work.abrasive}
        suggestions={[...new Set([...ownAbrasives.value, ...USUAL_ABRASIVES])]}
        onText={(abrasive) => change({ abrasive })}
      />
      <NumberField
        field={fieldKey.amount()}
        label="How much"
        reading
        text={work.amount.text}
        unit={work.amount.unit}
        problem={readCount(work.amount.text).problem}
        onText={(text) => changeAmount({ text })}
      />
      <Choice
        name="amount-unit"
        legend="Counted in"
        options={AMOUNTS}
        chosen={work.amount.unit}
        onChoose={(unit) => changeAmount({ unit })}
      />
      <TextField id="note" label="Note" text={work.note} onText={(note) => change({ note })} />
    </section>
  );
}
