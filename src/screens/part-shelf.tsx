import { useLocation } from 'preact-iso';
import type { Link } from '../state/chain';
import { duplicate } from '../state/duplicate';
import { archive, removePart } from '../state/shelves';
import type { PartRecord } from '../store/records';
import { Fold } from '../widgets/fold';
import { to } from './paths';

interface PartShelfProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}

/** What can be done with the part as a whole: a copy of it, away with it. */
export function PartShelf({ part, links }: PartShelfProps) {
  const { route } = useLocation();
  return (
    <Fold summary="Copy, archive or remove this part">
      <div class="stack">
        <button
          type="button"
          class="button"
          onClick={() => route(to.drawing(duplicate(part, links).id))}
        >
          Begin another like it
        </button>
        {part.archived === undefined && (
          <button
            type="button"
            class="button"
            onClick={() => {
              archive(part);
              route(to.bench());
            }}
          >
            Put it into the archive
          </button>
        )}
        <button
          type="button"
          class="button"
          onClick={() => {
            removePart(part);
            route(to.bench());
          }}
        >
          Remove it from the list
        </button>
        <p class="soft small">
          Another like it has the same drawing and setups, with nothing read. What is removed can be
          put back at any time.
        </p>
      </div>
    </Fold>
  );
}
