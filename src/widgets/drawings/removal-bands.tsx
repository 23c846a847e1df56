import type { Frame } from './face-frame';
import { clamp, outline, type Point } from './geometry';

export type Corner = 'topLeft' | 'topRight' | 'bottomLeft' | 'bottomRight';

interface RemovalBandsProps {
  readonly frame: Frame;
  /** How much comes off at each corner, as a share of the most: 0 to 1. */
  readonly shares: Readonly<Record<Corner, number>>;
}

interface Height extends Point {
  readonly share: number;
}

/** Borders of the bands, closer together the more comes off. */
const LEVELS = [0.04, 0.3, 0.5, 0.66, 0.79, 0.9, 1.01];

/** What comes off a face, shaded in bands like the layers of a map: darker and closer where it is more. */
export function RemovalBands({ frame, shares }: RemovalBandsProps) {
  const corners = heightsOf(frame, shares);
  return (
    <g>
      {LEVELS.slice(1).map((high, index) => {
        const low = LEVELS[index] ?? 0;
        const band = below(above(corners, low), high);
        return band.length < 3 ? null : (
          <path
            key={high}
            class="drawing-band"
            d={outline(band)}
            fill-opacity={0.14 + (0.86 * index) / (LEVELS.length - 2)}
          />
        );
      })}
    </g>
  );
}

/** The corners of the face, going round it. */
function heightsOf({ x, y, width, height }: Frame, shares: RemovalBandsProps['shares']): Height[] {
  return [
    { x, y, share: clamp(shares.topLeft, 0, 1) },
    { x: x + width, y, share: clamp(shares.topRight, 0, 1) },
    { x: x + width, y: y + height, share: clamp(shares.bottomRight, 0, 1) },
    { x, y: y + height, share: clamp(shares.bottomLeft, 0, 1) },
  ];
}

const above = (points: readonly Height[], level: number) => cut(points, level, 1);
const below = (points: readonly Height[], level: number) => cut(points, level, -1);

/** The part of a polygon whose share is on the `side` of `level`. */
function cut(points: readonly Height[], level: number, side: 1 | -1): Height[] {
  return points.flatMap((point, index) => {
    const next = points[(index + 1) % points.length] ?? point;
    const here = (point.share - level) * side;
    const there = (next.share - level) * side;
    const kept = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const part = here / (here - there);
    const crossing = {
      x: point.x + part * (next.x - point.x),
      y: point.y + part * (next.y - point.y),
      share: level,
    };
    return [...kept, crossing];
  });
}
