import type { Remedy } from '../../core/inspection/candidates/candidate';
import { type Face, oppositeFace } from '../../core/part/faces';
import { withOneMorePlace } from '../../entry/new-setup';
import { oneHeightOf } from '../../entry/one-height';
import type { SetupKind } from '../../entry/setup-entry';
import { addSetups } from '../../state/plate-changes';
import { newId } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { atOneHeightInWords, remediesInWords } from '../../words/remedies';

interface NotFixedProps {
  readonly remedies: readonly (readonly Remedy[])[];
  readonly requirement: { readonly face: Face; readonly datum: Face };
  readonly inspection: InspectionRecord;
}

const WAYS: Partial<Record<Remedy['kind'], readonly (readonly [SetupKind, string])[]>> = {
  'micrometer at two heights': [['micrometer', 'Use the micrometer']],
  'micrometer at a corner': [
    ['micrometer', 'Use the micrometer'],
    ['over the top', 'Pass an indicator over it'],
  ],
  'assume parallel': [['assumed parallel', 'Take as parallel']],
};

/** What is missing before there is a number, and the way to it. */
export function NotFixed({ remedies, requirement, inspection }: NotFixedProps) {
  const { face, datum } = requirement;
  const [first, ...others] = remediesInWords(remedies);
  const kinds = new Set(remedies.flat().map(({ kind }) => kind));
  // What fixes a plane takes three places; two heights fix a taper.
  const isPlane = kinds.has('micrometer at a corner');
  const pair = { faces: [face, oppositeFace(face)], base: datum } as const;
  const oneHeight = kinds.has('micrometer at two heights')
    ? oneHeightOf(inspection.setups, face)
    : undefined;
  const started = new Set(
    inspection.setups.filter(({ faces }) => faces.includes(face)).map(({ kind }) => kind),
  );
  const ways = [...kinds]
    .flatMap((kind) => WAYS[kind] ?? [])
    .filter(([kind]) => !started.has(kind));
  return (
    <>
      <div class="note" tabIndex={-1} data-not-fixed>
        <p>
          <b>Not fixed by these readings.</b>{' '}
          {others.length === 0 ? first : 'Any one of these would do:'}
        </p>
        {others.length > 0 && (
          <ul class="effects">
            {[first, ...others].map((way) => (
              <li key={way}>{way}</li>
            ))}
          </ul>
        )}
        {oneHeight !== undefined && <p>{atOneHeightInWords(oneHeight)}</p>}
      </div>
      {inspection.closed === undefined && ways.length > 0 && (
        <div class="row">
          {ways.map(([kind, label]) => (
            <button
              key={kind}
              type="button"
              class="button"
              onClick={() =>
                addSetups(inspection, [kind], pair, (setup) =>
                  isPlane ? withOneMorePlace(setup, newId) : setup,
                )
              }
            >
              {label}
            </button>
          ))}
        </div>
      )}
    </>
  );
}
