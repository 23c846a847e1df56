import { DimensionLine } from './dimension';
import type { Edge, Frame } from './face-frame';
import { LINE, type Point, textWidth } from './geometry';
import { PRESS_REACH } from './press-mark';
import { Text } from './text';

interface PressDistancesProps {
  readonly frame: Frame;
  readonly point: Point;
  readonly texts: Readonly<Partial<Record<Edge, string>>>;
}

/** From an edge of the face to the press point, each with its text, clear of the mark. */
export function PressDistances({ frame, point, texts }: PressDistancesProps) {
  const { x, y, width, height } = frame;
  const { top, bottom, left, right } = texts;
  // Texts of the level dimensions go to the side that no upright one needs.
  const beside = bottom === undefined ? point.y + BESIDE : point.y - BESIDE;
  const alone = left === undefined && right === undefined;
  return (
    <g>
      {top !== undefined && (
        <Upright x={point.x} edge={y} mark={point.y - PRESS_REACH} text={top} alone={alone} />
      )}
      {bottom !== undefined && (
        <Upright
          x={point.x}
          edge={y + height}
          mark={point.y + PRESS_REACH}
          text={bottom}
          alone={alone}
        />
      )}
      {left !== undefined && (
        <Level y={point.y} edge={x} mark={point.x - PRESS_REACH} text={left} textY={beside} />
      )}
      {right !== undefined && (
        <Level
          y={point.y}
          edge={x + width}
          mark={point.x + PRESS_REACH}
          text={right}
          textY={beside}
        />
      )}
    </g>
  );
}

/** From the press point to the middle of a text beside its mark. */
const BESIDE = PRESS_REACH + LINE / 2 + 3;

interface UprightProps {
  readonly x: number;
  readonly edge: number;
  readonly mark: number;
  readonly text: string;
  /** True where there is no level dimension. */
  readonly alone: boolean;
}

/** The text stands in the line, or where that is short and nothing else is there, beyond the mark. */
function Upright({ x, edge, mark, text, alone }: UprightProps) {
  const inward = mark > edge ? 1 : -1;
  const short = Math.abs(mark - edge) < 2 * LINE;
  const y = short && alone ? mark + inward * (PRESS_REACH + BESIDE) : (edge + mark) / 2;
  return (
    <g>
      <DimensionLine from={{ x, y: mark }} to={{ x, y: edge }} arrows="to" />
      <Text x={x} y={y} kind="drawing-strong drawing-on-sheet">
        {text}
      </Text>
    </g>
  );
}

interface LevelProps {
  readonly y: number;
  readonly edge: number;
  readonly mark: number;
  readonly text: string;
  readonly textY: number;
}

/** The text stands under or over the line, from the edge on. */
function Level({ y, edge, mark, text, textY }: LevelProps) {
  const inward = mark > edge ? 1 : -1;
  const room = Math.abs(mark - edge);
  const inset = Math.max(7, (room - textWidth(text)) / 2);
  return (
    <g>
      <DimensionLine from={{ x: mark, y }} to={{ x: edge, y }} arrows="to" />
      <Text
        x={edge + inward * inset}
        y={textY}
        anchor={inward === 1 ? 'start' : 'end'}
        kind="drawing-strong drawing-on-sheet"
      >
        {text}
      </Text>
    </g>
  );
}
