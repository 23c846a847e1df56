import { expanded } from '../core/statistics/coverage';
import { type WayOfWorking, wayName } from '../entry/way-of-working';
import { countAgain, type LearnedPass, learnedRate, leaveOut, passes } from '../state/learning';
import { learnAnew, shop, takeBackLearningAnew } from '../state/shop';
import { Page } from '../widgets/page';
import { withDoubt } from '../words/numbers';
import { moment } from '../words/time';
import { rateBasisInWords, typicalInWords } from '../words/work';
import { useGatheredPasses } from './gathered-passes';
import { to } from './paths';
import { METHOD_NAMES } from './work/method-names';

/** How fast each way of working has cut so far: to be looked at, put right, and begun anew. */
export function RatesScreen() {
  useGatheredPasses();
  const ways = new Map(passes.value.map(({ way }) => [wayName(way), way]));
  return (
    <Page title="How fast it cuts" back={{ to: to.kit(), name: 'kit and units' }}>
      {ways.size === 0 && (
        <p class="note">
          Nothing yet. Log how long you worked a face, and measure before and after: each such pass
          tells how fast that abrasive cuts that material.
        </p>
      )}
      {[...ways].map(([name, way]) => (
        <WaySheet key={name} name={name} way={way} />
      ))}
    </Page>
  );
}

interface WaySheetProps {
  readonly name: string;
  readonly way: WayOfWorking;
}

function WaySheet({ name, way }: WaySheetProps) {
  const { deviation } = shop.value.units;
  const rate = learnedRate(way);
  const own = passes.value.filter((pass) => wayName(pass.way) === name);
  const anew = shop.value.learnedSince?.[name];
  const title = [
    way.material.trim() || 'Material not named',
    way.abrasive.trim() || 'no abrasive named',
  ].join(', ');
  return (
    <section class="sheet" aria-label={title}>
      <h2>{title}</h2>
      <p class="big-number">{typicalInWords(rate, way.unit, deviation)}</p>
      <p class="soft small">{rateBasisInWords(rate)}</p>
      <ul class="effects small">
        {own.map((pass) => (
          <PassLine key={pass.work.id} pass={pass} />
        ))}
      </ul>
      {anew === undefined ? (
        <button type="button" class="button" onClick={() => learnAnew(name)}>
          Begin anew: forget these
        </button>
      ) : (
        <p class="note">
          Begun anew {moment(anew)}.{' '}
          <button type="button" class="button" onClick={() => takeBackLearningAnew(name)}>
            Count the earlier ones again
          </button>
        </p>
      )}
    </section>
  );
}

/** One pass, and whether it counts. */
function PassLine({ pass }: { readonly pass: LearnedPass }) {
  const { work, part, counts } = pass;
  const { deviation } = shop.value.units;
  return (
    <li class={counts ? undefined : 'soft'}>
      <div class="sheet-head">
        <span>
          {METHOD_NAMES[work.method]}{' '}
          <a href={to.work(part.id, work.id)}>{part.entry.name.trim()}</a>,{' '}
          {work.amount.text.trim()} {work.amount.unit}:{' '}
          {withDoubt(pass.wedge, expanded(pass), deviation)}. {moment(work.made)}
          {!counts && ' (does not count)'}
        </span>
        {work.notLearned === undefined ? (
          <button type="button" class="button button-quiet" onClick={() => leaveOut(pass)}>
            Leave out
          </button>
        ) : (
          <button type="button" class="button button-quiet" onClick={() => countAgain(pass)}>
            Count it again
          </button>
        )}
      </div>
    </li>
  );
}
