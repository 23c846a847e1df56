import { DIAL_RADIUS } from './dial-indicator';
import { at, LINE, type Point } from './geometry';
import { spread } from './spread';
import { Text } from './text';

interface ReadingsProps {
  readonly contacts: readonly Point[];
  /** The contact that the indicator stands at; its own reading is left out, the dial is there. */
  readonly touching: Point | undefined;
  readonly texts: readonly (string | undefined)[];
  /** 1 where the instrument is at the right of the face, −1 at the left. */
  readonly out: 1 | -1;
  /** The y of the middle of the dial. */
  readonly dial: number;
  /** The y that no text goes below. */
  readonly floor: number;
}

/** What was read at the other heights, between the face and the pillar. */
export function Readings({ contacts, touching, dial, floor, texts, out }: ReadingsProps) {
  const shown = contacts.flatMap((point, index) => {
    const text = texts[index];
    return text === undefined || text === '' || point === touching ? [] : [{ point, text }];
  });
  const split = touching?.y ?? floor;
  const clear = DIAL_RADIUS + LINE / 2;
  const above = shown.filter(({ point }) => point.y < split);
  const below = shown.filter(({ point }) => point.y >= split);
  return (
    <g>
      <Rows rows={above} low={LINE / 2} high={dial - clear} out={out} />
      <Rows rows={below} low={dial + clear} high={floor - LINE / 2} out={out} />
    </g>
  );
}

interface RowsProps {
  readonly rows: readonly { readonly point: Point; readonly text: string }[];
  readonly low: number;
  readonly high: number;
  readonly out: 1 | -1;
}

function Rows({ rows, low, high, out }: RowsProps) {
  const wanted = rows.map(({ point }) => point.y);
  const ys = spread(wanted, LINE, low, high);
  return (
    <g>
      {rows.map(({ point, text }, index) => {
        const y = ys[index] ?? point.y;
        // Where there is no room left, the dots alone have to do.
        if (y < low - 1 || y > high + 1) return null;
        const [from, to] = [at(point.x), at(point.x + out * 9)];
        return (
          <g key={`${index} ${text}`}>
            <path class="drawing-leader" d={`M${from} ${at(point.y)}L${to} ${at(y)}`} />
            <Text
              x={point.x + out * 11}
              y={y}
              anchor={out === 1 ? 'start' : 'end'}
              kind="drawing-on-sheet"
            >
              {text}
            </Text>
          </g>
        );
      })}
    </g>
  );
}
