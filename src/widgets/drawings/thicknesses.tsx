import { ArrowHead } from './dimension';
import { Drawing } from './drawing';
import { EdgeNames } from './edge-names';
import { type Edge, type Frame, FrameOutline, frameOf, GAP, heightUnder } from './face-frame';
import { at, clamp, DRAWING_WIDTH, drawable, LINE, type Point, textWidth } from './geometry';
import { type Box, placeTexts } from './place-texts';
import { Text } from './text';

/** A place of the micrometer. */
export interface Place {
  /** mm in from the left edge of the drawing. */
  readonly across: number;
  /** mm up from the bottom edge of the drawing. */
  readonly up: number;
  /** What was read there. */
  readonly text?: string;
  readonly active?: boolean;
  /** What it is called; by its order where left out. */
  readonly number?: number;
}

interface ThicknessesProps {
  /** mm, left to right. */
  readonly across: number;
  /** mm, bottom to top. */
  readonly up: number;
  readonly edgeNames: Readonly<Record<Edge, string>>;
  /** The dots stay within the face. */
  readonly places: readonly Place[];
  readonly label?: string;
}

const DOT = 12;

/** A face seen square-on with the places where its thickness is taken. */
export function Thicknesses({ across, up, edgeNames, places, label }: ThicknessesProps) {
  const beside = [edgeNames.left, edgeNames.right];
  const frame = frameOf({ across, up, beside, least: [84, 84] });
  const dots = places.map((place) => ({
    x: frame.x + along(place.across, across, frame.width),
    y: frame.y + frame.height - along(place.up, up, frame.height),
  }));
  const texts = placeTexts({
    dots,
    texts: places.map(({ text = '' }) => text),
    radius: DOT,
    face: inset(frame, 4),
    bounds: { x: 0, y: frame.y, width: DRAWING_WIDTH, height: frame.height },
    taken: namesBeside(frame, edgeNames),
  });
  return (
    <Drawing height={heightUnder(frame)} label={label}>
      <FrameOutline frame={frame} kind="drawing-metal" />
      <Origin frame={frame} />
      <EdgeNames frame={frame} names={edgeNames} />
      {places.map(({ active = false, text = '', number }, index) => {
        const place = texts[index];
        const kind = `drawing-strong ${place?.inside ? 'drawing-on-metal' : 'drawing-on-sheet'}`;
        return (
          <g key={`${index} ${text}`}>
            <Dot number={number ?? index + 1} active={active} at={dots[index] ?? frame} />
            {place && (
              <Text x={place.x} y={place.y} anchor={place.anchor} kind={kind}>
                {text}
              </Text>
            )}
          </g>
        );
      })}
    </Drawing>
  );
}

/** A distance as it is drawn, kept so far from both ends that the dot does not go over the edge. */
function along(distance: number, length: number, drawn: number): number {
  return clamp((distance / drawable(length)) * drawn, DOT + 1, drawn - DOT - 1);
}

interface DotProps {
  readonly number: number;
  readonly active: boolean;
  readonly at: Point;
}

function Dot({ number, active, at: { x, y } }: DotProps) {
  return (
    <g>
      {active && <circle class="drawing-ring" cx={at(x)} cy={at(y)} r={DOT + 3.5} />}
      <circle class="drawing-place" cx={at(x)} cy={at(y)} r={DOT} />
      <Text x={x} y={y} kind="drawing-number">
        {number}
      </Text>
    </g>
  );
}

function inset({ x, y, width, height }: Frame, by: number): Box {
  return { x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by };
}

/** Where the names at the left and right are written. */
function namesBeside({ x, y, width, height }: Frame, names: ThicknessesProps['edgeNames']): Box[] {
  const row = { y: y + (height - LINE) / 2, height: LINE };
  const [left, right] = [textWidth(names.left), textWidth(names.right)];
  return [
    { ...row, x: x - GAP - left, width: left },
    { ...row, x: x + width + GAP, width: right },
  ];
}

/** The corner that places count from. */
function Origin({ frame: { x, y, height } }: { readonly frame: Frame }) {
  const corner = { x, y: y + height };
  return (
    <g>
      <path
        class="drawing-count"
        d={`M${at(x)} ${at(corner.y - 26)}V${at(corner.y)}H${at(x + 26)}`}
      />
      <ArrowHead tip={{ x: x + 36, y: corner.y }} tail={corner} />
      <ArrowHead tip={{ x, y: corner.y - 36 }} tail={corner} />
    </g>
  );
}
