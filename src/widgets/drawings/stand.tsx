import { at } from './geometry';

interface StandProps {
  readonly kind: 'nose comparator' | 'column';
  /** The middle of the pillar. */
  readonly x: number;
  readonly top: number;
  readonly plate: number;
  /** 1 where the stand is at the right of the face, −1 at the left. */
  readonly out: 1 | -1;
}

/** What stands on the plate: a slim post on a rounded foot, or a column with a scale. */
export function Stand({ kind, x, top, plate, out }: StandProps) {
  return kind === 'column' ? (
    <Column x={x} top={top} plate={plate} />
  ) : (
    <Post x={x} top={top} plate={plate} out={out} />
  );
}

function Post({ x, top, plate, out }: Omit<StandProps, 'kind'>) {
  const [back, front] = [at(x + out * 20), at(x - out * 26)];
  const sweep = out === 1 ? 1 : 0;
  return (
    <g>
      <rect
        class="drawing-tool"
        x={at(x - 3.5)}
        y={at(top)}
        width="7"
        height={at(plate - top - 8)}
        rx="3"
      />
      <path
        class="drawing-tool"
        d={`M${front} ${at(plate)}v-5a8 8 0 0 ${sweep} ${out * 8} -8H${at(x + out * 12)}a8 8 0 0 ${sweep} ${out * 8} 8V${at(plate)}H${back}Z`}
      />
    </g>
  );
}

const GRADUATION = 8;

function Column({ x, top, plate }: Pick<StandProps, 'x' | 'top' | 'plate'>) {
  const count = Math.max(0, Math.floor((plate - 20 - top) / GRADUATION));
  const scale = Array.from(
    { length: count },
    (_, index) =>
      `M${at(x + 7)} ${at(plate - 22 - index * GRADUATION)}h${index % 5 === 0 ? -8 : -4}`,
  );
  return (
    <g>
      <rect
        class="drawing-tool"
        x={at(x - 7)}
        y={at(top)}
        width="14"
        height={at(plate - top - 8)}
      />
      <path class="drawing-dial-ticks" d={scale.join('')} />
      <rect class="drawing-tool" x={at(x - 10)} y={at(top - 6)} width="20" height="7" rx="2" />
      <path class="drawing-tool" d={`M${at(x - 22)} ${at(plate)}v-9l6 -6h32l6 6v9Z`} />
    </g>
  );
}
