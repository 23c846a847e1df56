import { useEffect } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { blankPart, type PartEntry } from '../entry/part-entry';
import { takeLaunchedFiles } from '../state/arrived-file';
import { addExample } from '../state/example';
import { loading, newId, newRecord, parts, putPart, shop } from '../state/shop';
import type { PartRecord } from '../store/records';
import { Mark } from '../widgets/drawings/mark';
import { Page } from '../widgets/page';
import { sizesInWords } from '../words/sizes';
import { BackupReminder } from './backup-reminder';
import { GoOn } from './go-on';
import { to } from './paths';

/** All parts; the way to a new one. */
export function BenchScreen() {
  const { route, query } = useLocation();
  useEffect(() => takeLaunchedFiles(() => route(to.files())), []);
  const begin = () => {
    const part: PartRecord = {
      ...newRecord(),
      ...{ kind: 'part' as const, id: newId(), example: false },
      entry: blankPart(shop.value.units.size),
    };
    putPart(part);
    route(to.drawing(part.id));
  };
  const showExample = (replace = false) => {
    const known = [...parts.value.values()].find(({ example }) => example);
    if (known !== undefined) return route(to.part(known.id), replace);
    const { part, inspection } = addExample();
    route(to.plate(part.id, inspection.id), replace);
  };
  // The start command opens the app with the example.
  const wantsExample = 'example' in query && loading.value === 'ready';
  useEffect(() => {
    if (wantsExample) showExample(true);
  }, [wantsExample]);

  const listed = [...parts.value.values()].reverse();
  return (
    <Page title="Highedge" side={<KitLink />} wide>
      <div class="stack bench-ways">
        <GoOn />
        <button type="button" class="button button-main button-wide" onClick={begin}>
          New part
        </button>
        {!listed.some(({ example }) => example) && loading.value === 'ready' && (
          <button type="button" class="button button-wide" onClick={() => showExample()}>
            Try it on an invented part
          </button>
        )}
        <BackupReminder />
      </div>
      {loading.value === 'waiting' && <p class="soft">Opening…</p>}
      {/* Below the way in, which so stays where it is while the records are being read. */}
      {loading.value === 'ready' && listed.length === 0 && <Welcome />}
      {listed.length > 0 && (
        <section class="stack" aria-labelledby="parts-heading">
          <h2 id="parts-heading">Parts</h2>
          <ul class="cards">
            {listed.map((part) => (
              <li key={part.id}>
                <PartCard part={part} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </Page>
  );
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

function PartCard({ part }: { readonly part: PartRecord }) {
  const { entry } = part;
  return (
    <a class="card" href={to.part(part.id)}>
      <strong>{entry.name.trim() || 'Part without a name'}</strong>
      <span class="soft">
        {lineOf(entry)}
        {part.closed !== undefined && ' · closed'}
      </span>
    </a>
  );
}

/** Job, material and sizes in one line, as far as they have been typed. */
function lineOf({ job, material, size }: PartEntry): string {
  return [job.trim(), material.trim(), sizesInWords(size)].filter(Boolean).join(' · ');
}
