import { useRoute } from 'preact-iso';
import { fieldKey } from '../../entry/field-keys';
import type { PartEntry } from '../../entry/part-entry';
import { anyWrong } from '../../entry/problems';
import { isReady, type PartRead, readPart } from '../../entry/read-part';
import { partAsItIs, putPart } from '../../state/shop';
import type { PartRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { Page } from '../../widgets/page';
import { TextField } from '../../widgets/text-field';
import { PartsBeside } from '../parts-beside';
import { to } from '../paths';
import { useUnitsButton } from '../units-button';
import { WhereItIs } from '../where-it-is';
import { WithPart } from '../with-part';
import { FacesSheet } from './faces-sheet';
import { RequirementsSheet } from './requirements-sheet';
import { SizeSheet } from './size-sheet';

const MATERIALS = [
  'Aluminium',
  'Brass',
  'Cast iron',
  'Hardened tool steel',
  'Mild steel',
  'Stainless steel',
];

/** What the drawing says of a part. */
export function DrawingScreen() {
  const { params } = useRoute();
  return <WithPart id={params.part ?? ''}>{(part) => <Drawing part={part} />}</WithPart>;
}

function Drawing({ part }: { readonly part: PartRecord }) {
  const { entry } = part;
  const read = readPart(entry);
  const units = useUnitsButton({ part });
  const change = (changed: Partial<PartEntry>) => {
    const now = partAsItIs(part);
    putPart({ ...now, entry: { ...now.entry, ...changed } });
  };
  return (
    <Page
      title={entry.name.trim() || 'New part'}
      back={{ to: to.part(part.id), name: 'the part' }}
      side={units.button}
      opened={units.panel}
      beside={<PartsBeside current={part.id} from={75} />}
      wide
    >
      <WhereItIs part={part} />
      <div class="overview">
        <InTurns>
          <div class="overview-part">
            <InTurns>
              <section class="sheet" aria-label="Name">
                <TextField
                  id="part-name"
                  label="Name"
                  text={entry.name}
                  problem={read.problems.get(fieldKey.name())}
                  onText={(name) => change({ name })}
                />
                <div class="columns">
                  <TextField
                    id="part-job"
                    label="Job reference"
                    text={entry.job}
                    onText={(job) => change({ job })}
                  />
                  <TextField
                    id="part-material"
                    label="Material"
                    text={entry.material}
                    suggestions={MATERIALS}
                    onText={(material) => change({ material })}
                  />
                </div>
              </section>
              <SizeSheet entry={entry} problems={read.problems} onChange={change} />
            </InTurns>
          </div>
          <div class="overview-part">
            <InTurns>
              <RequirementsSheet entry={entry} problems={read.problems} onChange={change} />
              <FacesSheet entry={entry} onChange={change} />
              {isReady(read) ? (
                <a class="button button-main" href={to.part(part.id)}>
                  To the part
                </a>
              ) : (
                <p class="note">{toBeginWith(read)}: then it can be read.</p>
              )}
            </InTurns>
          </div>
        </InTurns>
      </div>
    </Page>
  );
}

/** What has to be done before the part can be read. */
function toBeginWith({ part, problems }: PartRead): string {
  const wrong = anyWrong(problems);
  if (part !== undefined) return 'Put right what is marked';
  return wrong ? 'Give the three sizes, and put right what is marked' : 'Give the three sizes';
}
