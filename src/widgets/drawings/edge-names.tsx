import { type Edge, type Frame, GAP } from './face-frame';
import { at, LINE } from './geometry';
import { Text } from './text';

interface EdgeNamesProps {
  readonly frame: Frame;
  readonly names: Readonly<Record<Edge, string>>;
  /** The edges that stand high. */
  readonly high?: readonly Edge[];
}

/** The names of the four neighbours, each outside its edge, with the word 'high' where it is. */
export function EdgeNames({ frame, names, high = [] }: EdgeNamesProps) {
  const { x, y, width, height } = frame;
  const middle = x + width / 2;
  const beside = { y: y + height / 2 };
  return (
    <g>
      <EdgeName x={middle} y={y - GAP - 3} name={names.top} high={high.includes('top')} />
      <EdgeName
        x={middle}
        y={y + height + GAP + 3}
        name={names.bottom}
        high={high.includes('bottom')}
      />
      <SideName
        {...beside}
        x={x - GAP}
        anchor="end"
        name={names.left}
        high={high.includes('left')}
      />
      <SideName
        {...beside}
        x={x + width + GAP}
        anchor="start"
        name={names.right}
        high={high.includes('right')}
      />
    </g>
  );
}

interface NameProps {
  readonly x: number;
  readonly y: number;
  readonly name: string;
  readonly high: boolean;
}

/** On one line, above or below the face. */
function EdgeName({ x, y, name, high }: NameProps) {
  return (
    <Text x={x} y={y}>
      {name}
      {high && <tspan class="drawing-high-word"> high</tspan>}
    </Text>
  );
}

/** On two lines, beside the face. */
function SideName({ x, y, name, high, anchor }: NameProps & { anchor: 'start' | 'end' }) {
  const shift = high ? LINE / 2 : 0;
  return (
    <g>
      <Text x={x} y={y - shift} anchor={anchor}>
        {name}
      </Text>
      {high && (
        <Text x={x} y={y + shift} anchor={anchor} kind="drawing-high-word">
          high
        </Text>
      )}
    </g>
  );
}

/** A thick line along each edge that stands high. */
export function HighEdges({
  frame,
  edges,
}: {
  readonly frame: Frame;
  readonly edges: readonly Edge[];
}) {
  const [left, top] = [at(frame.x), at(frame.y)];
  const [right, bottom] = [at(frame.x + frame.width), at(frame.y + frame.height)];
  const lines: Readonly<Record<Edge, string>> = {
    top: `M${left} ${top}H${right}`,
    bottom: `M${left} ${bottom}H${right}`,
    left: `M${left} ${top}V${bottom}`,
    right: `M${right} ${top}V${bottom}`,
  };
  return edges.length === 0 ? null : (
    <path class="drawing-high-edge" d={edges.map((edge) => lines[edge]).join('')} />
  );
}
