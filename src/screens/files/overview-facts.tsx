import type { Overview } from '../../exchange/backup/restore';
import type { Tally } from '../../exchange/merge/tally';
import { countsInWords } from '../../words/merging';
import { moment } from '../../words/time';

/** What is in a backup, what merging it would do, and what of it cannot be taken. */
export function OverviewFacts({ overview }: { readonly overview: Overview }) {
  const { head, good, bad, examples, tally } = overview;
  const made = Number.isNaN(Date.parse(head.made)) ? 'an unknown time' : moment(head.made);
  return (
    <>
      <p>
        A backup of {made} with {good} {good === 1 ? 'record' : 'records'}. Nothing of it has been
        taken yet. Merging it would do this:
      </p>
      <TallyFacts tally={tally} />
      {bad > 0 && (
        <div class="note note-warning stack">
          <p>
            {bad} {bad === 1 ? 'line' : 'lines'} of it cannot be taken:
          </p>
          <ul>
            {examples.map(({ line, message }) => (
              <li key={line}>
                Line {line}: {message}
              </li>
            ))}
          </ul>
          {bad > examples.length && <p>And {bad - examples.length} more.</p>}
        </div>
      )}
    </>
  );
}

/** What a merge does, counted. */
export function TallyFacts({ tally }: { readonly tally: Tally }) {
  const { added } = tally;
  const isNew = countsInWords([
    { count: added.part, one: 'part', more: 'parts' },
    { count: added.inspection, one: 'inspection', more: 'inspections' },
    { count: added.work, one: 'correction', more: 'corrections' },
    { count: added.shop, one: 'set of shop settings', more: 'sets of shop settings' },
  ]);
  const rows: readonly (readonly [string, number])[] = [
    ['The same here already', tally.same],
    ['Later in the file: that goes on, the state here is kept as a version', tally.laterInFile],
    ['Later here: this goes on, the state in the file is kept as a version', tally.laterHere],
    ['Only earlier versions come to it', tally.moreVersions],
    ['Unreadable here, so left as it is', tally.untouched],
  ];
  return (
    <dl class="facts">
      <dt>New here</dt>
      <dd>{isNew}</dd>
      {rows.map(
        ([name, count]) =>
          count > 0 && (
            <>
              <dt>{name}</dt>
              <dd>{count}</dd>
            </>
          ),
      )}
    </dl>
  );
}
