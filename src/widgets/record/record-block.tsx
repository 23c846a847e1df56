import { type Axis, type Face, oppositeFace } from '../../core/part/faces';
import { faceLabel } from '../../words/faces';
import { blockView, cornersOfFace, SHOWN, type Spot } from './block-view';

interface RecordBlockProps {
  /** mm */
  readonly size: Readonly<Record<Axis, number>>;
  /** Each size as it is to be written. */
  readonly sizes: Readonly<Record<Axis, string>>;
  readonly datum: Face;
}

const SIDE = 150;
const MARGIN = { left: 96, right: 90, top: 26, bottom: 44 } as const;

/** The block in line, isometric, with its sizes, the names of its faces and datum A. */
export function RecordBlock({ size, sizes, datum }: RecordBlockProps) {
  const view = blockView(size, SIDE);
  const at = (corner: readonly [0 | 1, 0 | 1, 0 | 1]): Spot => {
    const { x, y } = view.spot(...corner);
    return { x: x + MARGIN.left, y: y + MARGIN.top };
  };
  const width = view.width + MARGIN.left + MARGIN.right;
  const height = view.height + MARGIN.top + MARGIN.bottom;
  const isShown = SHOWN.includes(datum);
  const foot = middle(isShown ? corners(datum, at) : sharedEdge(datum, at));
  return (
    <svg
      class="record-block"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`The block, ${sizes.x} by ${sizes.y} by ${sizes.z}, datum A is its ${datum}`}
    >
      {SHOWN.map((face) => (
        <path key={face} class="record-line record-face" d={outline(corners(face, at))} />
      ))}
      {SHOWN.map((face) => {
        const { x, y } = middle(corners(face, at));
        const isDatum = face === datum;
        return (
          <text key={face} class="record-text" x={x} y={y + (isDatum ? 18 : 4)}>
            {faceLabel(face)}
          </text>
        );
      })}
      <Size from={at([0, 0, 0])} to={at([1, 0, 0])} out={[-1, 1]} text={`X ${sizes.x}`} />
      <Size from={at([1, 0, 0])} to={at([1, 1, 0])} out={[1, 1]} text={`Y ${sizes.y}`} />
      <Size from={at([0, 0, 0])} to={at([0, 0, 1])} out={[-1, 0]} text={`Z ${sizes.z}`} />
      <Datum foot={foot} to={datumPlace(datum, foot, width)} />
    </svg>
  );
}

/** A letter in a box, on a leader with the triangle of a datum (ISO 5459). */
function Datum({ foot, to }: { readonly foot: Spot; readonly to: Spot }) {
  const length = Math.hypot(to.x - foot.x, to.y - foot.y);
  const [x, y] = [(to.x - foot.x) / length, (to.y - foot.y) / length];
  const base = [-5, 5].map((side) => `${foot.x - side * y} ${foot.y + side * x}`);
  return (
    <g>
      <path class="record-line" d={`M${to.x} ${to.y}L${foot.x} ${foot.y}`} />
      <path class="record-solid" d={`M${base.join('L')}L${foot.x + 9 * x} ${foot.y + 9 * y}Z`} />
      <rect class="record-line record-face" x={to.x - 10} y={to.y - 10} width="20" height="20" />
      <text class="record-text" x={to.x} y={to.y + 5}>
        A
      </text>
    </g>
  );
}

/** Where the box of the datum stands: clear of the block and its sizes. */
function datumPlace(datum: Face, foot: Spot, width: number): Spot {
  switch (datum) {
    case 'bottom':
      return { x: foot.x, y: foot.y + 32 };
    case 'top':
      return { x: 12, y: 12 };
    case 'front':
      return { x: 12, y: foot.y + 36 };
    case 'left':
      return { x: 12, y: foot.y - 40 };
    case 'right':
    case 'back':
      return { x: width - 12, y: foot.y - 30 };
  }
}

interface SizeProps {
  readonly from: Spot;
  readonly to: Spot;
  /** Which way the text stands off the edge. */
  readonly out: readonly [number, number];
  readonly text: string;
}

function Size({ from, to, out, text }: SizeProps) {
  const { x, y } = middle([from, to]);
  const anchor = out[0] < 0 ? 'end' : 'start';
  return (
    <text class="record-text" x={x + out[0] * 8} y={y + out[1] * 16} text-anchor={anchor}>
      {text}
    </text>
  );
}

function corners(face: Face, at: (corner: readonly [0 | 1, 0 | 1, 0 | 1]) => Spot): Spot[] {
  return cornersOfFace(face).map(at);
}

/** The edge that a hidden face shares with one that is shown. */
function sharedEdge(face: Face, at: (corner: readonly [0 | 1, 0 | 1, 0 | 1]) => Spot): Spot[] {
  const beside = SHOWN.find((shown) => shown !== oppositeFace(face)) ?? 'front';
  const own = cornersOfFace(face).map((corner) => corner.join());
  return cornersOfFace(beside)
    .filter((corner) => own.includes(corner.join()))
    .map(at);
}

function middle(spots: readonly Spot[]): Spot {
  const mean = (axis: 'x' | 'y') => spots.reduce((sum, one) => sum + one[axis], 0) / spots.length;
  return { x: mean('x'), y: mean('y') };
}

function outline(spots: readonly Spot[]): string {
  return `M${spots.map(({ x, y }) => `${x} ${y}`).join('L')}Z`;
}
