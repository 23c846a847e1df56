import { Drawing } from './drawing';
import { EdgeNames, HighEdges } from './edge-names';
import { type Edge, type Frame, FrameOutline, frameOf, GAP } from './face-frame';
import { at, clamp, DRAWING_WIDTH, drawable, finite, LINE, type Point, wrapped } from './geometry';
import { PressDistances } from './press-distances';
import { PressMark } from './press-mark';
import { type Corner, RemovalBands } from './removal-bands';
import { Text } from './text';

interface PressViewProps {
  /** mm, left to right of the view. */
  readonly across: number;
  /** mm, bottom to top of the view. */
  readonly up: number;
  /** The neighbouring faces as they stand in the view. */
  readonly edgeNames: Readonly<Record<Edge, string>>;
  /** mm from the middle of the face, to the right and up in the view; left out: no place to press. */
  readonly press?: { readonly across: number; readonly up: number };
  /** Text of what comes off at each corner. */
  readonly corners: Readonly<Record<Corner, string>>;
  /** The same as shares of the most: 0 to 1. */
  readonly removalShare: Readonly<Record<Corner, number>>;
  /** Edges that are high: one, or two that meet in a high corner. */
  readonly highEdges: readonly Edge[];
  /** Text at the distance from an edge to the press point. High edges have a dimension line even without. */
  readonly pressDistances?: Readonly<Partial<Record<Edge, string>>>;
  /** Line under the drawing that says where to press. */
  readonly pressLabel?: string;
  readonly label?: string;
}

/** The face to be worked while it lies on the paper, seen from above through the part. */
export function PressView(props: PressViewProps) {
  const { across, up, edgeNames, press, corners, highEdges } = props;
  const { left, right } = edgeNames;
  const beside = [...Object.values(corners), left, right];
  const frame = frameOf({ across, up, beside, least: [112, 120] });
  const foot = frame.y + frame.height + GAP + LINE;
  const lines = props.pressLabel ? wrapped(props.pressLabel, DRAWING_WIDTH - 12) : [];
  const distances = {
    ...Object.fromEntries(highEdges.map((edge) => [edge, ''])),
    ...props.pressDistances,
  };
  const point = press && pointOf(frame, press, across, up);
  return (
    <Drawing height={foot + (lines.length > 0 ? lines.length * LINE + 8 : 0)} label={props.label}>
      <FrameOutline frame={frame} kind="drawing-face" />
      <RemovalBands frame={frame} shares={props.removalShare} />
      <FrameOutline frame={frame} kind="drawing-edges" />
      {point && <MiddleLines frame={frame} />}
      <HighEdges frame={frame} edges={highEdges} />
      <EdgeNames frame={frame} names={edgeNames} high={highEdges} />
      <CornerTexts frame={frame} texts={corners} />
      {point && <PressDistances frame={frame} point={point} texts={distances} />}
      {point && <PressMark at={point} />}
      {lines.map((line, index) => (
        <Text
          key={line}
          x={DRAWING_WIDTH / 2}
          y={foot + (index + 0.5) * LINE}
          kind="drawing-strong"
        >
          {line}
        </Text>
      ))}
    </Drawing>
  );
}

function pointOf(
  { x, y, width, height }: Frame,
  press: { readonly across: number; readonly up: number },
  across: number,
  up: number,
): Point {
  return {
    x: x + clamp(0.5 + finite(press.across) / drawable(across), 0, 1) * width,
    y: y + clamp(0.5 - finite(press.up) / drawable(up), 0, 1) * height,
  };
}

function MiddleLines({ frame: { x, y, width, height } }: { readonly frame: Frame }) {
  return (
    <path
      class="drawing-middle"
      d={`M${at(x + width / 2)} ${at(y)}v${at(height)}M${at(x)} ${at(y + height / 2)}h${at(width)}`}
    />
  );
}

interface CornerTextsProps {
  readonly frame: Frame;
  readonly texts: Readonly<Record<Corner, string>>;
}

/** What comes off, written beside each corner. */
function CornerTexts({ frame: { x, y, width, height }, texts }: CornerTextsProps) {
  const [left, right] = [x - GAP, x + width + GAP];
  const [top, bottom] = [y + LINE / 2, y + height - LINE / 2];
  return (
    <g class="drawing-strong">
      <Text x={left} y={top} anchor="end">
        {texts.topLeft}
      </Text>
      <Text x={right} y={top} anchor="start">
        {texts.topRight}
      </Text>
      <Text x={left} y={bottom} anchor="end">
        {texts.bottomLeft}
      </Text>
      <Text x={right} y={bottom} anchor="start">
        {texts.bottomRight}
      </Text>
    </g>
  );
}
