import { Drawing } from './drawing';
import { EdgeNames } from './edge-names';
import { type Edge, type Frame, FrameOutline, frameOf, heightUnder } from './face-frame';
import { at, boldWidth, clamp, drawable } from './geometry';
import { cellsOf, gridOf, type MapPlace } from './map-cells';
import { Text } from './text';
import './face-map.css';

/** What was found at a place. */
export interface MappedPlace extends MapPlace {
  /** From 0 at the lowest to 1 at the highest. */
  readonly share: number;
  readonly text: string;
  readonly word?: 'high' | 'low' | undefined;
}

interface FaceMapProps {
  /** mm, left to right. */
  readonly across: number;
  /** mm, bottom to top. */
  readonly up: number;
  readonly edgeNames: Readonly<Record<Edge, string>>;
  readonly places: readonly MappedPlace[];
  readonly label: string;
}

/** Least room for a number with a word under it. */
const CELL = { width: 44, height: 40 };
/** Radius of a place that is part of no grid. */
const SPOT = 21;

/** How high a face stands at each place read: low is blue, high is orange, with the number in each. */
export function FaceMap({ across, up, edgeNames, places, label }: FaceMapProps) {
  const grid = gridOf(places);
  const [columns, rows] = grid ? [grid.columns.length, grid.rows.length] : [4, 4];
  const least = [Math.min(columns * CELL.width, 250), rows * CELL.height] as const;
  const frame = frameOf({ across, up, beside: [edgeNames.left, edgeNames.right], least });
  const cells = grid && cellsOf(places, grid, frame);
  return (
    <Drawing height={heightUnder(frame)} label={label}>
      <FrameOutline frame={frame} kind="drawing-face" />
      {places.map((place, index) => {
        const cell = cells?.[index] ?? spotOf(place, { across, up }, frame);
        return <Cell key={index} place={place} cell={cell} round={cells === undefined} />;
      })}
      <FrameOutline frame={frame} kind="drawing-edges" />
      <EdgeNames frame={frame} names={edgeNames} />
    </Drawing>
  );
}

/** Round a place that is part of no grid; kept within the face. */
function spotOf(place: MapPlace, face: { across: number; up: number }, frame: Frame): Frame {
  const x = clamp((place.across / drawable(face.across)) * frame.width, SPOT, frame.width - SPOT);
  const y = clamp((place.up / drawable(face.up)) * frame.height, SPOT, frame.height - SPOT);
  return {
    x: frame.x + x - SPOT,
    y: frame.y + frame.height - y - SPOT,
    width: 2 * SPOT,
    height: 2 * SPOT,
  };
}

interface CellProps {
  readonly place: MappedPlace;
  readonly cell: Frame;
  readonly round: boolean;
}

/** Steps of colour from the lowest to the highest. */
const STEPS = 7;

function Cell({ place: { share, text, word }, cell, round }: CellProps) {
  const { x, y, width, height } = cell;
  const step = Math.min(STEPS - 1, Math.floor(clamp(share, 0, 1) * STEPS));
  const middle = { x: x + width / 2, y: y + height / 2 };
  const size = Math.min(16, (15 * (width - 4)) / boldWidth(text));
  return (
    <g>
      <rect
        class={`map-cell map-${step}`}
        x={at(x)}
        y={at(y)}
        width={at(width)}
        height={at(height)}
        rx={round ? SPOT : 0}
      />
      <text
        class="drawing-text map-number"
        x={at(middle.x)}
        y={at(middle.y - (word ? 8 : 0))}
        dy="0.36em"
        text-anchor="middle"
        style={{ fontSize: `${at(size)}px` }}
      >
        {text}
      </text>
      {word && (
        <Text x={middle.x} y={middle.y + 9} kind="map-word">
          {word}
        </Text>
      )}
    </g>
  );
}
