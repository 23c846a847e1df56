import { onAllFourSides } from '../../entry/four-sides';
import { facesToMap, isUprightPair, type PairToRead, pairsToRead } from '../../entry/pairs-to-read';
import type { PartEntry } from '../../entry/part-entry';
import type { SetupKind } from '../../entry/setup-entry';
import { addSetups } from '../../state/plate-changes';
import { newId } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { Fold } from '../../widgets/fold';
import { faceLabel, pairName } from '../../words/faces';

/** A way to read a pair: what lies on the bench, and the setups that it makes. */
interface Way {
  readonly name: string;
  readonly kinds: readonly SetupKind[];
  readonly fourSides?: boolean;
}

const COMMON: readonly Way[] = [
  { name: 'Nose comparator', kinds: ['nose comparator'] },
  { name: 'Column', kinds: ['column'] },
  { name: 'Micrometer', kinds: ['micrometer'] },
  { name: 'Take as parallel', kinds: ['assumed parallel'] },
];

const OF_BOTH: readonly Way[] = [
  { name: 'Nose comparator and micrometer', kinds: ['nose comparator', 'micrometer'] },
  { name: 'Nose comparator, on all four sides', kinds: ['nose comparator'], fourSides: true },
  { name: 'Column, on all four sides', kinds: ['column'], fourSides: true },
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

/**
 * The ways to read each pair of faces that the drawing asks about, by what is to hand. Each pair is
 * folded away but the first, and in it what is not read often.
 */
export function AddSetup({ entry, inspection }: AddSetupProps) {
  const add = ({ kinds, fourSides }: Way, pair: PairToRead) =>
    addSetups(inspection, kinds, pair, (setup) =>
      fourSides && 'base' in setup ? onAllFourSides(setup, newId) : setup,
    );
  return (
    <section class="sheet" aria-labelledby="add-heading">
      <h3 id="add-heading">Add a way of reading</h3>
      {pairsToRead(entry).map((pair, index) => (
        <Fold key={`${pair.faces[0]} ${pair.base}`} summary={headingOf(pair)} open={index === 0}>
          <div class="stack">
            <WaysOf pair={pair} onAdd={(way) => add(way, pair)} />
          </div>
        </Fold>
      ))}
      {facesToMap(entry).map((pair, index) => (
        <Fold
          key={`map ${pair.faces[0]}`}
          summary={`Flatness of the ${pair.faces[0]}`}
          open={index === 0 && entry.requirements.length === 0}
        >
          <Buttons ways={MAPS} onAdd={(way) => add(way, pair)} />
        </Fold>
      ))}
    </section>
  );
}

interface WaysOfProps {
  readonly pair: PairToRead;
  readonly onAdd: (way: Way) => void;
}

function WaysOf({ pair, onAdd }: WaysOfProps) {
  if (!isUprightPair(pair)) return <Buttons ways={LYING_WAYS} onAdd={onAdd} />;
  return (
    <>
      <Buttons ways={COMMON} onAdd={onAdd} />
      <Fold summary={`More ways for ${pairName(pair.faces)}`}>
        <Buttons ways={OF_BOTH} onAdd={onAdd} />
      </Fold>
      <Fold summary={`Form of the ${pair.faces[0]}`}>
        <Buttons ways={FACE_WAYS} onAdd={onAdd} />
      </Fold>
    </>
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

function headingOf({ faces: [one, other], base }: PairToRead): string {
  const name = `${faceLabel(one)} and ${other}`;
  return isUprightPair({ faces: [one, other], base }) ? `${name}, on the ${base}` : name;
}
