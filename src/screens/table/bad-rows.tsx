import { type BadRow, TOLD } from '../../exchange/csv/long-table';

interface BadRowsProps {
  readonly bad: readonly BadRow[];
  /** How many there are in all. */
  readonly all: number;
}

/** The rows of a table that cannot be taken, by their lines; of very many the first, and how many more. */
export function BadRows({ bad, all }: BadRowsProps) {
  if (all === 0) return null;
  const told = bad.slice(0, TOLD);
  return (
    <div class="note note-warning stack" role="status">
      <p>
        {all} {all === 1 ? 'line' : 'lines'} cannot be taken:
      </p>
      <ul>
        {told.map(({ line, message }) => (
          <li key={line}>
            Line {line}: {message}
          </li>
        ))}
      </ul>
      {all > told.length && <p>And {all - told.length} more.</p>}
    </div>
  );
}
