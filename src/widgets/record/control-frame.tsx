import type { Face } from '../../core/part/faces';
import { type Asked, kindOf, type RequirementKind } from '../../core/part/requirement';
import { requirementName } from '../../words/faces';

interface ControlFrameProps extends Asked {
  /** The tolerance as it is to be shown. */
  readonly tolerance: string;
  readonly datumA: Face;
}

const HEIGHT = 24;
const SYMBOL = 28;
/** Width of a character of the lettering, about. */
const CHARACTER = 8.2;

/** Symbols of ISO 1101 (geometrical characteristics) as lines in a square of 28 by 24. */
const SYMBOLS: Readonly<Record<RequirementKind, string>> = {
  squareness: 'M14 5V19M6 19H22',
  parallelism: 'M7 19L13 5M15 19L21 5',
  flatness: 'M5 18L11 6H23L17 18Z',
};

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
