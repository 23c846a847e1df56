import { shop } from '../../state/shop';
import { LEVEL_RANGE, level, setLevel } from '../../state/shop-settings';
import { NumberField } from '../../widgets/number-field';
import { PER_CENT } from '../../words/numbers';

/** From which chance on a verdict is given. */
export function LevelSheet() {
  const message = `Between ${LEVEL_RANGE.least} and ${LEVEL_RANGE.most}${PER_CENT}`;
  return (
    <section class="sheet" aria-labelledby="level-heading">
      <h2 id="level-heading">How sure a verdict must be</h2>
      <NumberField
        field="level"
        label="‘In’ and ‘out’ are said from this chance on"
        text={shop.value.level}
        unit="%"
        problem={level.value === undefined ? { kind: 'wrong', message } : undefined}
        onText={setLevel}
      />
      <p class="soft">ISO 14253-1 takes 95&nbsp;%.</p>
    </section>
  );
}
