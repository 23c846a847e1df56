import { facesToMap, isUpright, type PairToRead, pairsToRead } from '../../entry/pairs-to-read';
import type { PartEntry } from '../../entry/part-entry';
import { onAllFourSides } from '../../entry/placings';
import type { SetupKind } from '../../entry/setup-entry';
import { addSetups } from '../../state/plate-changes';
import { newId } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { Fold } from '../../widgets/fold';
import { pairName } from '../../words/faces';

/** A way to read a pair: what lies on the bench, and the setups that it makes. */
interface Way {
  readonly name: string;
  readonly kinds: readonly SetupKind[];
  readonly fourSides?: boolean;
}

const UPRIGHT_WAYS: readonly Way[] = [
  { name: 'Nose comparator', kinds: ['nose comparator'] },
  { name: 'Nose comparator and micrometer', kinds: ['nose comparator', 'micrometer'] },
  { name: 'Nose comparator, on all four sides', kinds: ['nose comparator'], fourSides: true },
  { name: 'Column', kinds: ['column'] },
  { name: 'Micrometer', kinds: ['micrometer'] },
  { name: 'Take as parallel', kinds: ['assumed parallel'] },
];

const MAPS: readonly Way[] = [{ name: 'Map of the face, on jacks', kinds: ['face map'] }];

const FACE_WAYS: readonly Way[] = [
  { name: 'Indicator over the face', kinds: ['over the top'] },
  ...MAPS,
];

const LYING_WAYS: readonly Way[] = [{ name: 'Micrometer', kinds: ['micrometer'] }, ...FACE_WAYS];

interface AddSetupProps {
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
}

/** The ways to read each pair of faces that the drawing asks about, by what is to hand. */
export function AddSetup({ entry, inspection }: AddSetupProps) {
  const add = ({ kinds, fourSides }: Way, pair: PairToRead) =>
    addSetups(
      inspection,
      kinds,
      pair,
      fourSides
        ? (setup) => (setup.kind === 'nose comparator' ? onAllFourSides(setup, newId) : setup)
        : undefined,
    );
  return (
    <section class="sheet" aria-labelledby="add-heading">
      <h3 id="add-heading">Add a way of reading</h3>
      {pairsToRead(entry).map((pair) => {
        const [ways, rare] = isUpright(pair) ? [UPRIGHT_WAYS, FACE_WAYS] : [LYING_WAYS, []];
        return (
          <fieldset key={`${pair.faces[0]} ${pair.base}`} class="stack">
            <legend class="small soft">{headingOf(pair)}</legend>
            <Buttons ways={ways} onAdd={(way) => add(way, pair)} />
            {rare.length > 0 && (
              <Fold summary={`Form of the ${pair.faces[0]}`}>
                <Buttons ways={rare} onAdd={(way) => add(way, pair)} />
              </Fold>
            )}
          </fieldset>
        );
      })}
      {facesToMap(entry).map((pair) => (
        <fieldset key={`map ${pair.faces[0]}`} class="stack">
          <legend class="small soft">Flatness of the {pair.faces[0]}</legend>
          <Buttons ways={MAPS} onAdd={(way) => add(way, pair)} />
        </fieldset>
      ))}
    </section>
  );
}

interface ButtonsProps {
  readonly ways: readonly Way[];
  readonly onAdd: (way: Way) => void;
}

function Buttons({ ways, onAdd }: ButtonsProps) {
  return (
    <div class="row">
      {ways.map((way) => (
        <button key={way.name} type="button" class="button" onClick={() => onAdd(way)}>
          {way.name}
        </button>
      ))}
    </div>
  );
}

function headingOf(pair: PairToRead): string {
  const name = pairName(pair.faces);
  return isUpright(pair) ? `Between ${name}, standing on the ${pair.base}` : `Between ${name}`;
}
