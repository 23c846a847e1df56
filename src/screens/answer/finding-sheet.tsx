import { isPending } from '../../core/inspection/any-finding';
import { foundOf, rangeOf } from '../../core/inspection/found';
import type { PartEntry } from '../../entry/part-entry';
import { sidesToSeat } from '../../entry/seat-each-again';
import type { Worked } from '../../state/answers';
import { shop } from '../../state/shop';
import type { FixedFinding } from '../../state/zone-form/questions';
import type { InspectionRecord } from '../../store/records';
import { ZoneScale } from '../../widgets/drawings/zone-scale';
import { Found } from '../../widgets/found';
import { Later } from '../../widgets/later';
import { deviation as shown } from '../../words/numbers';
import { seatingsInWords, verdictInWords } from '../../words/verdicts';
import { Help } from '../help/help';
import { SeatEachAgain } from '../plate/seat-each-again';
import { AskedFrame } from './asked-frame';
import { AssumptionWarning } from './assumption-warning';
import { Chance } from './chance';
import { NextLine } from './next-line';
import { WithForm } from './with-form';
import { Working } from './working';

interface FindingSheetProps {
  readonly finding: FixedFinding;
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
}

/** One requirement: what was found, and whether the drawing is met. */
export function FindingSheet({ finding, entry, inspection, worked }: FindingSheetProps) {
  const { requirement, zone, verdict, formPoints, withForm, seatings, assumed } = finding;
  const { deviation } = shop.value.units;
  const hasForm = formPoints.length > 0;
  return (
    <section class="sheet">
      <AskedFrame requirement={requirement} entry={entry} />
      <Found
        {...foundOf(finding)}
        unit={deviation}
        verdict={isPending(finding) ? undefined : verdict}
      />
      {!hasForm && (
        <ZoneScale
          value={zone.width}
          {...rangeOf(foundOf(finding))}
          limit={requirement.tolerance}
          limitText={shown(requirement.tolerance, deviation)}
          verdict={verdict}
        />
      )}
      {hasForm ? <WithForm finding={finding} /> : <p>{verdictInWords(finding)}</p>}
      {seatings !== undefined && (
        <p>{seatingsInWords(seatings, sidesToSeat(inspection.setups, requirement))}</p>
      )}
      {typeof seatings === 'number' && inspection.closed === undefined && (
        <SeatEachAgain inspection={inspection} asked={requirement} />
      )}
      {assumed && <AssumptionWarning />}
      {inspection.closed === undefined && (
        <Later turns={1}>
          <NextLine
            worked={worked}
            requirement={requirement.id}
            degreesOfFreedom={zone.degreesOfFreedom}
          />
        </Later>
      )}
      <Working
        result={{ ...zone, value: zone.width }}
        what="The width of the zone"
        inspection={inspection}
      >
        {withForm === undefined && <Chance finding={finding} />}
      </Working>
      <Help topics={['out of square', 'doubt', 'verdict', 'chance']} />
    </section>
  );
}
