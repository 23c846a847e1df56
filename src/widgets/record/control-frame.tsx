import type { Face } from '../../core/part/faces';
import { type Asked, kindOf } from '../../core/part/requirement';
import { requirementName } from '../../words/faces';
import { SYMBOLS } from '../requirement-symbols';

interface ControlFrameProps extends Asked {
  /** The tolerance as it is to be shown. */
  readonly tolerance: string;
  readonly datumA: Face;
}

const HEIGHT = 24;
const SYMBOL = 28;
/** Width of a character of the lettering, about. */
const CHARACTER = 8.2;

/** A requirement as the drawing writes it, in a tolerance frame (ISO 1101) that is a drawing itself. */
export function ControlFrame({ face, datum, tolerance, datumA }: ControlFrameProps) {
  const kind = kindOf({ face, datum });
  const letter = datum === datumA ? 'A' : datum;
  const middle = tolerance.length * CHARACTER + 16;
  const end = SYMBOL + middle;
  const last = letter === undefined ? 0 : letter.length * CHARACTER + 16;
  const width = end + last;
  const name = `${requirementName({ face, datum })} within ${tolerance}: ${kind}`;
  return (
    <svg
      class="control-frame"
      width={width}
      height={HEIGHT}
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={letter === undefined ? name : `${name}, datum ${letter}`}
    >
      <path
        class="control-frame-line"
        d={`M1 1H${width - 1}V${HEIGHT - 1}H1ZM${SYMBOL} 1V${HEIGHT - 1}${letter === undefined ? '' : `M${end} 1V${HEIGHT - 1}`}`}
      />
      <path class="control-frame-line" d={SYMBOLS[kind]} />
      <text class="control-frame-text" x={SYMBOL + middle / 2} y="17">
        {tolerance}
      </text>
      {letter !== undefined && (
        <text class="control-frame-text" x={end + last / 2} y="17">
          {letter}
        </text>
      )}
    </svg>
  );
}
