import type { Face } from '../core/part/faces';
import { type Asked, kindOf } from '../core/part/requirement';
import { requirementName } from '../words/faces';
import { SYMBOLS } from './requirement-symbols';

interface RequirementFrameProps extends Asked {
  /** The tolerance as it is to be shown. */
  readonly tolerance: string;
  /** The face that is datum A. */
  readonly datumA: Face;
}

/** A requirement as the drawing writes it: symbol, tolerance and datum, if any, in a frame (ISO 1101). */
export function RequirementFrame({ face, datum, tolerance, datumA }: RequirementFrameProps) {
  const kind = kindOf({ face, datum });
  return (
    <span class="requirement">
      <span class="requirement-name">{requirementName({ face, datum })}</span>
      <span class="frame">
        <svg class="frame-symbol" viewBox="0 0 28 24" role="img" aria-label={kind}>
          <path d={SYMBOLS[kind]} />
        </svg>
        <span>{tolerance}</span>
        {datum !== undefined && <span>{datum === datumA ? 'A' : datum}</span>}
      </span>
    </span>
  );
}
