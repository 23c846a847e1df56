import type { ComponentChildren } from 'preact';
import { FACES } from '../../../core/part/faces';
import { factorInWords } from '../leans';
import type { DrawnBlock } from './drawn-block';
import { isUnknown } from './shown-block';

/** In words: how large the errors are drawn, and what the marks stand for; the same in every view. */
export function Key({ block }: { readonly block: DrawnBlock }) {
  const { factor, shown, lengthened, leans } = block;
  const { removals = [] } = shown;
  return (
    <ul class="turning-block-key small">
      {factor !== undefined && <li>Errors drawn {factorInWords(factor)} times as large</li>}
      {lengthened && <li>Short sides drawn longer than they are</li>}
      {removals.length > 0 && (
        <Sign sign={<path class="turning-block-side" d="M2 2H26V16L2 9Z" />}>to come off</Sign>
      )}
      {removals.some(({ press }) => press) && (
        <Sign
          sign={
            <path
              class="turning-block-cross"
              d="M14 1V17M4 9H24M9 9a5 5 0 1 1 10 0a5 5 0 1 1-10 0"
            />
          }
        >
          press here
        </Sign>
      )}
      {leans && (
        <Sign sign={<path class="turning-block-square" d="M2 14V3H26" />}>square block</Sign>
      )}
      {FACES.some((face) => isUnknown(shown, face)) && (
        <Sign sign={<path class="turning-block-plain turning-block-edges" d="M2 2H26V16H2Z" />}>
          face not known
        </Sign>
      )}
    </ul>
  );
}

function Sign({ sign, children }: { sign: ComponentChildren; children: string }) {
  return (
    <li>
      <svg class="turning-block-sign" viewBox="0 0 28 18" aria-hidden="true">
        {sign}
      </svg>
      {children}
    </li>
  );
}
