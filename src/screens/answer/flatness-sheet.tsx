import { isPending } from '../../core/inspection/any-finding';
import type { FixedFlatness, FlatnessFinding, MapLack } from '../../core/inspection/flatness';
import { foundOf, rangeOf } from '../../core/inspection/found';
import { type Face, oppositeFace } from '../../core/part/faces';
import type { PartEntry } from '../../entry/part-entry';
import { addSetups } from '../../state/plate-changes';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { ZoneScale } from '../../widgets/drawings/zone-scale';
import { Found } from '../../widgets/found';
import {
  flatnessChanceInWords,
  flatnessInWords,
  lackInWords,
  MAP_AGAIN_IN_WORDS,
  mappedInWords,
} from '../../words/flatness';
import { deviation as shown } from '../../words/numbers';
import { Help } from '../help/help';
import { AskedFrame } from './asked-frame';
import { LonePlaceNote } from './lone-place-note';
import { Working } from './working';

interface FlatnessSheetProps {
  readonly finding: FlatnessFinding;
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
}

/** One face that is to be flat: how far from flat its map shows it, or what is missing. */
export function FlatnessSheet({ finding, entry, inspection }: FlatnessSheetProps) {
  return (
    <section class="sheet" aria-label={`Flatness of the ${finding.requirement.face}`}>
      <AskedFrame requirement={finding.requirement} entry={entry} />
      {finding.fixed ? (
        <Flatness finding={finding} inspection={inspection} />
      ) : (
        <NotMapped
          lack={finding.lack}
          face={finding.requirement.face}
          base={entry.datum}
          inspection={inspection}
        />
      )}
    </section>
  );
}

interface FlatnessProps {
  readonly finding: FixedFlatness;
  readonly inspection: InspectionRecord;
}

function Flatness({ finding, inspection }: FlatnessProps) {
  const { requirement, zone, verdict } = finding;
  const { deviation, size } = shop.value.units;
  const pending = isPending(finding);
  const found = foundOf(finding);
  return (
    <>
      <Found {...found} unit={deviation} verdict={pending ? undefined : verdict} />
      {!pending && (
        <ZoneScale
          value={found.value}
          {...rangeOf(found)}
          limit={requirement.tolerance}
          limitText={shown(requirement.tolerance, deviation)}
          verdict={verdict}
        />
      )}
      <p>{flatnessInWords(finding)}</p>
      <p class="soft small">{mappedInWords(finding, size)}</p>
      {!pending && verdict !== 'in' && <LonePlaceNote finding={finding} inspection={inspection} />}
      {inspection.closed === undefined && verdict === 'too close to call' && (
        <p class="small">{MAP_AGAIN_IN_WORDS}</p>
      )}
      <Working
        result={{ ...zone, value: zone.width }}
        what="The width of the zone"
        inspection={inspection}
      >
        <p class="small">{flatnessChanceInWords(finding, deviation)}</p>
      </Working>
      <Help topics={['flatness', 'doubt', 'verdict']} />
    </>
  );
}

interface NotMappedProps {
  readonly lack: MapLack;
  readonly face: Face;
  readonly base: Face;
  readonly inspection: InspectionRecord;
}

/** What is missing before there is a number, and the way to it. */
function NotMapped({ lack, face, base, inspection }: NotMappedProps) {
  const isBegun = inspection.setups.some(
    ({ kind, faces }) => kind === 'face map' && faces[0] === face,
  );
  return (
    <>
      <p class="note" tabIndex={-1} data-not-fixed>
        <b>Not fixed by these readings.</b> {lackInWords(lack, face, shop.value.units.deviation)}
      </p>
      {inspection.closed === undefined && !isBegun && (
        <button
          type="button"
          class="button"
          onClick={() =>
            addSetups(inspection, ['face map'], { faces: [face, oppositeFace(face)], base })
          }
        >
          Map the {face}
        </button>
      )}
    </>
  );
}
