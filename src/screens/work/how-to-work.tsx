import {
  chooseMethod,
  isAgainst,
  type MethodChoice,
} from '../../core/correction/method/choose-method';
import type { PlanStep } from '../../core/correction/plan/plan';
import { nextPass } from '../../core/correction/rates/next-pass';
import { cutDepths } from '../../core/correction/setting/cut-depths';
import { presentRises } from '../../core/correction/setting/present-rise';
import { shimsFor } from '../../core/correction/setting/shims';
import { tapersOf } from '../../core/correction/setting/tapers-of';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import { axesInFace } from '../../core/part/faces';
import type { Part } from '../../core/part/part';
import { knownMaterial } from '../../entry/material';
import { readMethodLimits } from '../../entry/method-limits';
import type { WayOfWorking } from '../../entry/way-of-working';
import { learnedRate } from '../../state/learning';
import { shop } from '../../state/shop';
import { methodLimits } from '../../state/shop-settings';
import { DrawnSign } from '../../widgets/drawn-sign';
import { Fold } from '../../widgets/fold';
import {
  choiceInWords,
  depthInWords,
  METHOD_ORDERS,
  reasonInWords,
  setUpInWords,
  shimsInWords,
} from '../../words/methods';
import { nextPassInWords, rateBasisInWords } from '../../words/work';
import { PressLimit } from './press-limit';

interface HowToWorkProps {
  readonly step: PlanStep;
  readonly part: Part;
  /** What the readings say: with it the shim can be told. */
  readonly answer: InspectionAnswer | undefined;
  readonly way: WayOfWorking;
  /** The work that this is the advice for, where it is on record: it does not teach itself. */
  readonly work?: string;
}

/** Lap, grind or machine: which, why, and how. */
export function HowToWork(props: HowToWorkProps) {
  const { step, part, way } = props;
  const [u, v] = axesInFace(step.face);
  const material = knownMaterial(way.material);
  const [first, ...others] = chooseMethod(
    {
      ...{ wedge: step.wedge, mean: step.removal.mean },
      area: part.block.size[u] * part.block.size[v],
      ...(material !== undefined && { material }),
      ...(part.roughness !== undefined && { roughness: part.roughness }),
    },
    readMethodLimits(methodLimits.value).settings,
  );
  if (first === undefined) return null;
  return (
    <div class="stack">
      <p>
        <b>{choiceInWords(first)}</b>
      </p>
      <How choice={first} {...props} />
      <Fold summary="Why">
        <Reasons choice={first} />
      </Fold>
      {others.map((choice) => (
        <Fold key={choice.method} summary={`Or ${METHOD_ORDERS[choice.method].toLowerCase()}`}>
          <div class="stack">
            <Reasons choice={choice} />
            <How choice={choice} {...props} />
          </div>
        </Fold>
      ))}
    </div>
  );
}

function Reasons({ choice }: { readonly choice: MethodChoice }) {
  return (
    <ul class="effects small">
      {choice.reasons.map((reason) => (
        <li key={reason.kind} class={isAgainst(reason) ? undefined : 'soft'}>
          {isAgainst(reason) && <DrawnSign sign="out" />} {reasonInWords(reason, shop.value.units)}
        </li>
      ))}
    </ul>
  );
}

function How({ choice, ...props }: HowToWorkProps & { readonly choice: MethodChoice }) {
  return choice.method === 'lap' ? <HowToLap {...props} /> : <HowToSet {...props} />;
}

/** How long to lap at first, where that is from, and where not to press. */
function HowToLap({ step, part, way, work }: HowToWorkProps) {
  const { deviation } = shop.value.units;
  const rate = learnedRate({ ...way, method: 'lap' }, work);
  const abrasive = way.abrasive.trim();
  return (
    <>
      <p>
        <b>{nextPassInWords(nextPass(step.wedge, rate), way.unit, deviation)}</b>
      </p>
      <p class="soft small">
        {abrasive !== '' && `On ${abrasive}, flat on a plate. `}
        {rateBasisInWords(rate)}
      </p>
      <PressLimit step={step} part={part} />
    </>
  );
}

/** How to set the block for a level cut. */
function HowToSet({ step, part, answer }: HowToWorkProps) {
  const { deviation } = shop.value.units;
  const tapers = answer === undefined ? {} : tapersOf(step.face, answer.adjustment);
  return (
    <>
      <p>{setUpInWords(step.face, presentRises(part.block, step.removal), deviation)}</p>
      <p>{shimsInWords(shimsFor(part.block, step.removal, tapers), deviation)}</p>
      <p>{depthInWords(cutDepths(part.block, step.removal), deviation)}</p>
    </>
  );
}
