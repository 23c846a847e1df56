import type { Face } from '../../core/part/faces';
import { isUpright, placeEdges } from '../../entry/place-edges';
import { type ReadingRow, readingRows } from '../../entry/reading-rows';
import { isBlank, type TypedLength } from '../../entry/typed-length';
import type { InspectionRecord } from '../../store/records';
import { KIND_NAMES } from '../../words/kinds';
import { asTyped } from '../../words/read-as';
import { moment } from '../../words/time';

interface RecordReadingsProps {
  readonly inspection: InspectionRecord;
  readonly datum: Face;
}

/** Every reading as it was entered; those left out of the reckoning with why. */
export function RecordReadings({ inspection, datum }: RecordReadingsProps) {
  const rows = readingRows(inspection.setups).filter(({ value }) => !isBlank(value));
  return (
    <section>
      <h3>Readings, as entered</h3>
      <p>
        {rows.length === 0
          ? 'There is none.'
          : 'Plus is the plunger pushed in, unless something else stands with the reading.'}
      </p>
      {rows.length > 0 && (
        <table class="record-readings">
          <thead>
            <tr>
              <th scope="col">No.</th>
              <th scope="col">Reading</th>
              <th scope="col">Way, set at</th>
              <th scope="col">As entered</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <Row
                key={row.id}
                row={row}
                number={index + 1}
                inspection={inspection}
                datum={datum}
              />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

interface RowProps extends RecordReadingsProps {
  readonly row: ReadingRow;
  readonly number: number;
}

function Row({ row, number, inspection, datum }: RowProps) {
  const left = row.leftOutAs.flatMap((name) => inspection.leftOut?.[name] ?? [])[0];
  return (
    <tr>
      <td>{number}</td>
      <th scope="row">
        {row.name}
        {left !== undefined && (
          <small>
            Left out {moment(left.at)}: {left.why}
          </small>
        )}
      </th>
      <td>
        {KIND_NAMES[row.kind]}
        <small>{[...howTaken(row), ...settingsOf(row, datum)].map((text) => `, ${text}`)}</small>
      </td>
      <td>{left === undefined ? asTyped(row.value) : <del>{asTyped(row.value)}</del>}</td>
    </tr>
  );
}

/** What is to be known of the reading besides where it was taken. */
function howTaken({ turned, takenOver }: ReadingRow): readonly string[] {
  return [
    ...(turned ? ['plus on its dial is the plunger let out'] : []),
    ...(takenOver === undefined
      ? []
      : [`taken over from the readings of ${moment(takenOver)}: neither face worked since`]),
  ];
}

/** What the reading was set at, in words. */
function settingsOf(row: ReadingRow, datum: Face): readonly string[] {
  const edges = placeEdges(row.face, datum);
  // An indicator passes over a face that lies.
  const stands = row.kind === 'micrometer' && isUpright(row.face, datum);
  const parts: readonly (readonly [string, TypedLength | undefined])[] = [
    ['nose at', row.noseHeight],
    ['indicator at', row.height],
    [`${stands ? 'up' : 'in'} from ${edges.up}`, row.up],
    [`in from ${edges.across}`, row.across],
  ];
  const at = parts.flatMap(([name, typed]) =>
    typed === undefined || isBlank(typed) ? [] : [`${name} ${asTyped(typed)}`],
  );
  const on = row.base === undefined ? [] : [`standing on its ${row.base}`];
  const between =
    row.kind === 'micrometer' && row.opposite !== undefined
      ? [`between the ${row.face} and the ${row.opposite}`]
      : [];
  const all = [...on, ...between, ...at].join(', ');
  return all === '' ? [] : [all];
}
