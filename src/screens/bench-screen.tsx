import { useEffect } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { blankPart } from '../entry/part-entry';
import { addExample } from '../state/example';
import { hasParts, isBlankSheet, listed } from '../state/find-parts';
import { loading, newId, newRecord, parts, putPart, shop } from '../state/shop';
import type { PartRecord } from '../store/records';
import { Mark } from '../widgets/drawings/mark';
import { InTurns } from '../widgets/in-turns';
import { Page } from '../widgets/page';
import { BackupReminder } from './backup-reminder';
import { PartList } from './bench/part-list';
import { GoOn } from './go-on';
import { to } from './paths';

/** All parts; the way to a new one. */
export function BenchScreen() {
  const { route, query } = useLocation();
  const begin = () => {
    // One that was begun and left with nothing typed will do.
    const left = listed.value.find(isBlankSheet);
    if (left !== undefined) return route(to.drawing(left.part.id));
    const part: PartRecord = {
      ...newRecord(),
      ...{ kind: 'part' as const, id: newId(), example: false },
      entry: blankPart(shop.value.units.size),
    };
    putPart(part);
    route(to.drawing(part.id));
  };
  const showExample = (replace = false) => {
    const known = [...parts.value.values()].find(isShownExample);
    if (known !== undefined) return route(to.part(known.id), replace);
    const { part, inspection } = addExample();
    route(to.plate(part.id, inspection.id), replace);
  };
  // The start command opens the app with the example.
  const wantsExample = 'example' in query && loading.value === 'ready';
  useEffect(() => {
    if (wantsExample) showExample(true);
  }, [wantsExample]);

  const hasExample = [...parts.value.values()].some(isShownExample);
  return (
    <Page title="Highedge" side={<KitLink />} wide>
      <InTurns>
        <div class="stack bench-ways">
          <button type="button" class="button button-main button-wide" onClick={begin}>
            New part
          </button>
          {/* Known once the parts are read, as all below is: above, it would push what is there from under a finger. */}
          <GoOn />
          {!hasExample && loading.value === 'ready' && (
            <button type="button" class="button button-wide" onClick={() => showExample()}>
              Try it on an invented part
            </button>
          )}
          {/* With the example, which would push it from under a finger. */}
          {loading.value !== 'waiting' && <BackupReminder />}
        </div>
        {loading.value === 'waiting' && <p class="soft">Opening…</p>}
        {/* Below the way in, which so stays where it is while the records are being read. */}
        {loading.value === 'ready' && !hasParts.value && <Welcome />}
        {hasParts.value && <PartList />}
      </InTurns>
    </Page>
  );
}

function isShownExample({ example, removed }: PartRecord): boolean {
  return example && removed === undefined;
}

function KitLink() {
  return (
    <a class="band-button" href={to.kit()}>
      Kit
    </a>
  );
}

function Welcome() {
  return (
    <div class="welcome">
      <Mark size={112} />
      <p>
        Stand a block on the plate and read one side, then the other with the setting untouched.
        Highedge tells how far out of square it is, whether the drawing is met, which edge is high,
        how much to take off and where to press.
      </p>
    </div>
  );
}
