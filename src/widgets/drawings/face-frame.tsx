import { at, boldWidth, DRAWING_WIDTH, fitted, LINE } from './geometry';

export type Edge = 'top' | 'bottom' | 'left' | 'right';

/** A face on the drawing. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface FaceToFrame {
  /** mm */
  readonly across: number;
  /** mm */
  readonly up: number;
  /** Texts at the left and right of the face. */
  readonly beside: readonly string[];
  /** Smallest width and height to draw it with. */
  readonly least: readonly [width: number, height: number];
}

/** Between a side of the face and what is written there. */
export const GAP = 10;

/** The face in the middle of the drawing, with room for texts all round. */
export function frameOf({ across, up, beside, least }: FaceToFrame): Frame {
  const side = Math.min(
    Math.max(...beside.map(boldWidth)) + GAP + 3,
    (DRAWING_WIDTH - least[0]) / 2,
  );
  const { width, height } = fitted(across, up, {
    width: [least[0], DRAWING_WIDTH - 2 * side],
    height: [least[1], 230],
  });
  return { x: (DRAWING_WIDTH - width) / 2, y: LINE + GAP, width, height };
}

/** Height of a drawing with this face and a line of text under it. */
export function heightUnder(frame: Frame): number {
  return frame.y + frame.height + GAP + LINE;
}

/** The outline of the face. */
export function FrameOutline({ frame, kind }: { readonly frame: Frame; readonly kind: string }) {
  const { x, y, width, height } = frame;
  return <rect class={kind} x={at(x)} y={at(y)} width={at(width)} height={at(height)} />;
}
