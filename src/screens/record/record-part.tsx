import { AXES } from '../../core/part/faces';
import type { PartEntry } from '../../entry/part-entry';
import { readPart } from '../../entry/read-part';
import { isBlank } from '../../entry/typed-length';
import { who } from '../../state/shop-settings';
import type { InspectionRecord } from '../../store/records';
import { RecordBlock } from '../../widgets/record/record-block';
import { asTyped } from '../../words/read-as';
import { sizeInWords } from '../../words/sizes';
import { moment } from '../../words/time';

interface RecordPartProps {
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
}

/** Which part, when and by whom; the part as a drawing. */
export function RecordPart({ entry, inspection }: RecordPartProps) {
  const { closed } = inspection;
  const { block } = readPart(entry).part ?? {};
  const typed = (axis: (typeof AXES)[number]) => sizeInWords(entry.size[axis]);
  const by = closed === undefined ? who.value.trim() : closed.who;
  return (
    <section class="record-part">
      <dl>
        <dt>Job</dt>
        <dd>{entry.job.trim() || '–'}</dd>
        <dt>Material</dt>
        <dd>{entry.material.trim() || '–'}</dd>
        {AXES.map((axis) => (
          <Size key={axis} entry={entry} axis={axis} text={typed(axis)} />
        ))}
        {entry.finish !== undefined && entry.finish.text.trim() !== '' && (
          <>
            <dt>Finish</dt>
            <dd>
              Ra {entry.finish.text.trim()} {entry.finish.unit}
            </dd>
          </>
        )}
        <dt>Datum A</dt>
        <dd>{entry.datum}</dd>
        <dt>Readings begun</dt>
        <dd>{moment(inspection.made)}</dd>
        <dt>Readings finished</dt>
        <dd>{closed === undefined ? 'still open' : moment(closed.at)}</dd>
        <dt>Measured by</dt>
        <dd>{by || '–'}</dd>
      </dl>
      {block !== undefined && (
        <RecordBlock
          size={block.size}
          sizes={{ x: typed('x'), y: typed('y'), z: typed('z') }}
          datum={entry.datum}
        />
      )}
    </section>
  );
}

interface SizeProps {
  readonly entry: PartEntry;
  readonly axis: (typeof AXES)[number];
  readonly text: string;
}

function Size({ entry, axis, text }: SizeProps) {
  const { lower, upper } = entry.sizeLimits?.[axis] ?? {};
  const limits = [upper, lower].flatMap((limit) =>
    limit === undefined || isBlank(limit) ? [] : [asTyped(limit)],
  );
  return (
    <>
      <dt>Size {axis.toUpperCase()}</dt>
      <dd>
        {text}
        {limits.length > 0 && ` (limits ${limits.join(', ')})`}
      </dd>
    </>
  );
}
