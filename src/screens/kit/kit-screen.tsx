import { defaultKit } from '../../entry/kit-entry';
import { readKit } from '../../entry/read-kit';
import { setKit } from '../../state/kits';
import { loading, shop } from '../../state/shop';
import { offlineReady } from '../../updates';
import { Page } from '../../widgets/page';
import { useCameFrom } from '../came-from';
import { Message } from '../message';
import { LICENCES, to } from '../paths';
import { UnitChoices } from '../units-button';
import { KitFigures } from './kit-figures';
import { KitItems } from './kit-items';
import { Kits } from './kits';
import { LevelSheet } from './level-sheet';
import { WorkingLimitsSheet } from './working-limits-sheet';

/** What is known of the shop's instruments: where the ± of every answer comes from. */
export function KitScreen() {
  const { kit: entry } = shop.value;
  const { problems } = readKit(entry);
  const from = useCameFrom();
  const back =
    from === undefined ? { to: to.bench(), name: 'the bench' } : { to: from, name: 'the readings' };
  // What is changed must be what lies in the database.
  if (loading.value === 'waiting') return <Message title="Kit and units" text="Opening…" />;
  return (
    <Page title="Kit and units" back={back} wide>
      <div class="overview">
        <div class="overview-part">
          <section class="sheet" aria-label="Units">
            <UnitChoices />
          </section>
          <section class="sheet" aria-labelledby="kit-heading">
            <h2 id="kit-heading">How good the kit is</h2>
            <p class="soft">
              Every ± comes from these. They begin as common practice for a clean shop with good kit
              (no source); put in what your own certificates and trials say. Readings repeated after
              lifting the block take the place of the seating given here once there are enough of
              them.
            </p>
            <Kits />
            <KitItems entry={entry} />
            <KitFigures entry={entry} problems={problems} />
            <button type="button" class="button" onClick={() => setKit(defaultKit())}>
              Back to common practice
            </button>
          </section>
        </div>
        <div class="overview-part">
          <LevelSheet />
          <WorkingLimitsSheet />
          <p class="soft small">
            Highedge {__APP_VERSION__}.{' '}
            {offlineReady.value
              ? 'All of it is on this device: it works without a network.'
              : 'Not yet all on this device: keep the network until it is.'}{' '}
            <a href={LICENCES} target="_blank" rel="noreferrer">
              Licences of what it is made of
            </a>
          </p>
        </div>
      </div>
    </Page>
  );
}
