import type { Face } from '../core/part/faces';
import { kindOf } from '../core/part/requirement';
import { requirementName, SYMBOLS } from '../words/faces';

interface RequirementFrameProps {
  readonly face: Face;
  readonly datum: Face;
  /** The tolerance as it is to be shown. */
  readonly tolerance: string;
  /** The face that is datum A. */
  readonly datumA: Face;
}

/** A requirement as the drawing writes it: symbol, tolerance and datum in a frame (ISO 1101). */
export function RequirementFrame({ face, datum, tolerance, datumA }: RequirementFrameProps) {
  const kind = kindOf({ face, datum });
  return (
    <span class="requirement">
      <span class="requirement-name">{requirementName({ face, datum })}</span>
      <span class="frame">
        <span role="img" aria-label={kind}>
          {SYMBOLS[kind]}
        </span>
        <span>{tolerance}</span>
        <span>{datum === datumA ? 'A' : datum}</span>
      </span>
    </span>
  );
}
