import { type ComponentType, Fragment, options, type VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { AnswerPart } from '../../../src/screens/answer/answer-part';
import { CorrectionPart } from '../../../src/screens/work/correction-part';
import type { Worked } from '../../../src/state/answers';
import { newRecord, shop } from '../../../src/state/shop';
import type { InspectionRecord, PartRecord } from '../../../src/store/records';
import { Fold } from '../../../src/widgets/fold';
import { InTurns } from '../../../src/widgets/in-turns';
import { Later } from '../../../src/widgets/later';
import type { TypedInspection } from './typed-inspections';

/** What is folded away or drawn in a later turn is drawn at once: nothing is to hide in there. */
options.vnode = (vnode: VNode) => {
  if (vnode.type === (Fold as ComponentType)) Object.assign(vnode.props, { open: true });
  if ([Later, InTurns].some((turns) => vnode.type === (turns as ComponentType))) {
    vnode.type = Fragment as ComponentType;
  }
};

/** What no text and no drawing may hold. */
const NONSENSE = /NaN|Infinity|undefined|\[object|∞ (?!degrees)/;

/** Where the answer and the correction that are shown of `worked` hold what is no number or no word. */
export function nonsenseShown(typed: TypedInspection, worked: Worked): string | undefined {
  const { kit, units, level, share } = typed;
  shop.value = { ...shop.value, kit, units, level, share };
  const part: PartRecord = {
    ...newRecord(),
    ...{ kind: 'part', id: 'part', example: false, entry: typed.part },
  };
  const inspection: InspectionRecord = {
    ...newRecord(),
    ...{ kind: 'inspection', id: 'inspection', part: 'part', setups: typed.setups },
  };
  const shown = renderToString(
    <>
      <AnswerPart
        areBeside={false}
        onGoOn={() => undefined}
        onFinish={() => undefined}
        part={part}
        inspection={inspection}
        worked={worked}
      />
      <CorrectionPart part={part} inspection={inspection} worked={worked} isLast />
    </>,
  );
  const at = shown.search(NONSENSE);
  return at < 0 ? undefined : shown.slice(Math.max(0, at - 300), at + 60);
}
