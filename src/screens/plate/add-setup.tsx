import { isUpright, type PairToRead, pairsToRead } from '../../entry/pairs-to-read';
import type { PartEntry } from '../../entry/part-entry';
import type { SetupKind } from '../../entry/setup-entry';
import { addSetup } from '../../state/chain';
import type { InspectionRecord } from '../../store/records';
import { pairName } from '../../words/faces';

const UPRIGHT_WAYS: readonly (readonly [SetupKind, string])[] = [
  ['nose comparator', 'Nose comparator'],
  ['column', 'Column'],
  ['micrometer', 'Micrometer'],
  ['assumed parallel', 'Take as parallel'],
];

const LYING_WAYS = UPRIGHT_WAYS.filter(([kind]) => kind === 'micrometer');

interface AddSetupProps {
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
}

/** The ways to read each pair of faces that the drawing asks about. */
export function AddSetup({ entry, inspection }: AddSetupProps) {
  return (
    <section class="sheet" aria-labelledby="add-heading">
      <h3 id="add-heading">Add a way of reading</h3>
      {pairsToRead(entry).map((pair) => (
        <div key={`${pair.faces[0]} ${pair.base}`} class="stack">
          <p class="small soft">{headingOf(pair)}</p>
          <div class="row">
            {(isUpright(pair) ? UPRIGHT_WAYS : LYING_WAYS).map(([kind, label]) => (
              <button
                key={kind}
                type="button"
                class="button"
                onClick={() => addSetup(inspection, kind, pair)}
              >
                {label}
              </button>
            ))}
          </div>
        </div>
      ))}
    </section>
  );
}

function headingOf(pair: PairToRead): string {
  const name = pairName(pair.faces);
  return isUpright(pair) ? `Between ${name}, standing on the ${pair.base}` : `Between ${name}`;
}
