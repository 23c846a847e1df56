import { at, type Point } from './geometry';

/** How far the mark reaches from its middle. */
export const PRESS_REACH = 24;

/** Ridges of a finger print about its middle: half width and half height of each arch. */
const RIDGES = [
  [4, 5],
  [8, 10],
  [12, 15],
] as const;

/** Where the finger goes: a print with cross hairs. */
export function PressMark({ at: { x, y } }: { readonly at: Point }) {
  const [cx, cy] = [at(x), at(y)];
  const ridges = RIDGES.map(([rx, ry]) => {
    const foot = at(cy + ry * 0.7);
    return `M${at(cx - rx)} ${foot}V${cy}A${rx} ${ry} 0 0 1 ${at(cx + rx)} ${cy}V${foot}`;
  });
  const cross = `M${at(cx - PRESS_REACH)} ${cy}h14m20 0h14M${cx} ${at(cy - PRESS_REACH)}v14m0 20v14`;
  return (
    <g>
      <ellipse class="drawing-print" cx={cx} cy={cy} rx="16" ry="20" />
      <path class="drawing-ridges" d={ridges.join('')} />
      <path class="drawing-cross" d={cross} />
      <circle class="drawing-contact-lit" cx={cx} cy={cy} r="4.5" />
    </g>
  );
}
