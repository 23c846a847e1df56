import { reversal } from '../../core/readings/reversal';
import { ArrowHead } from './dimension';
import { Drawing } from './drawing';
import { at, DRAWING_WIDTH } from './geometry';
import { type NumberLine, numberLine } from './number-line';
import { Text } from './text';

interface ReversalProps {
  /** What each side showed, µm; the second is left out while it is still to come. */
  readonly first: number;
  readonly second?: number;
  /** The comparator's zero where the sides are not parallel, µm: their mean where it is left out. */
  readonly found?: number;
  /** How far the dial has been turned since: both readings move by it, µm. */
  readonly turned?: number;
  readonly firstName: string;
  readonly secondName: string;
  /** A number of µm as it is to be shown. */
  readonly inWords: (micrometres: number) => string;
}

const AXIS = 104;
const HEIGHT = 136;
/** Heights of what is said of either reading. */
const [FIRST, SECOND] = [32, 68];
/** Either side of the readings, µm: room to turn the dial. */
const ROOM = 40;

/** Two readings on one scale: each stands as far off the comparator's zero as its side leans. The zero is their mean where the sides are parallel. */
export function Reversal(props: ReversalProps) {
  const { first, second, found, turned = 0, firstName, secondName, inWords } = props;
  const marked = [first, second ?? first, found ?? first];
  const line = numberLine(Math.min(...marked) - ROOM, Math.max(...marked) + ROOM);
  if (second === undefined) return <OneReading {...props} line={line} />;
  const zero = (found ?? reversal(first, second).zero) + turned;
  const [lean, otherLean] = [first + turned - zero, second + turned - zero];
  const label = `${firstName} ${inWords(first + turned)}, ${secondName} ${inWords(second + turned)}: the comparator’s zero is ${inWords(zero)}, the lean ${inWords(lean)} and ${inWords(otherLean)}.`;
  return (
    <Drawing height={HEIGHT} label={label}>
      <Scale line={line} inWords={inWords} />
      <path class="drawing-limit" d={`M${at(line.x(zero))} 18V${AXIS}`} />
      <Text x={clear(line.x(zero))} y={9} kind="drawing-strong">
        {`zero ${inWords(zero)}`}
      </Text>
      <Lean line={line} from={zero} to={first + turned} y={FIRST} />
      <Lean line={line} from={zero} to={second + turned} y={SECOND} />
      <Reading
        x={line.x(first + turned)}
        y={FIRST}
        texts={[firstName, inWords(lean)]}
        away={lean < otherLean ? -1 : 1}
      />
      <Reading
        x={line.x(second + turned)}
        y={SECOND}
        texts={[secondName, inWords(otherLean)]}
        away={lean < otherLean ? 1 : -1}
      />
    </Drawing>
  );
}

/** Where the zero might be, for all that one reading says: as many as are drawn, and every other. */
const GUESSES = [-18, 0, 12] as const;

function OneReading({ first, firstName, inWords, line }: ReversalProps & { line: NumberLine }) {
  return (
    <Drawing
      height={HEIGHT}
      label={`${firstName} ${inWords(first)}: zero and lean together. Neither is known.`}
    >
      <Scale line={line} inWords={inWords} />
      {GUESSES.map((guess, index) => (
        <g key={guess}>
          <path
            class="drawing-square"
            d={`M${at(line.x(first + guess))} ${24 + index * 24}V${AXIS}`}
          />
          <Text x={line.x(first + guess) - 12} y={24 + index * 24} anchor="end" kind="drawing-soft">
            zero?
          </Text>
          <Lean line={line} from={first + guess} to={first} y={24 + index * 24} />
        </g>
      ))}
      <path class="drawing-extension" d={`M${at(line.x(first))} 14V${AXIS}`} />
      <circle class="drawing-contact-lit" cx={at(line.x(first))} cy={AXIS} r="5" />
    </Drawing>
  );
}

interface ScaleProps {
  readonly line: NumberLine;
  readonly inWords: (micrometres: number) => string;
}

function Scale({ line, inWords }: ScaleProps) {
  const ticks = line.ticks.map((tick) => `M${at(line.x(tick))} ${AXIS}v6`);
  return (
    <g>
      <path class="drawing-zero" d={`M8 ${AXIS}H${DRAWING_WIDTH - 8}${ticks.join('')}`} />
      {line.ticks
        .filter((_, index) => index % 4 === 0)
        .map((tick) => (
          <Text key={tick} x={line.x(tick)} y={AXIS + 17} kind="drawing-soft">
            {inWords(tick)}
          </Text>
        ))}
    </g>
  );
}

interface LeanProps {
  readonly line: NumberLine;
  readonly from: number;
  readonly to: number;
  readonly y: number;
}

function Lean({ line, from, to, y }: LeanProps) {
  const [start, end] = [line.x(from), line.x(to)];
  return (
    <g>
      <path class="drawing-dimension" d={`M${at(start)} ${y}H${at(end)}`} />
      <ArrowHead tip={{ x: end, y }} tail={{ x: start, y }} />
    </g>
  );
}

interface ReadingProps {
  readonly x: number;
  readonly y: number;
  /** Which side it is of, and how far it stands off the zero. */
  readonly texts: readonly [name: string, lean: string];
  /** 1 where there is room at the right of it, −1 at the left. */
  readonly away: 1 | -1;
}

function Reading({ x, y, texts: [name, lean], away }: ReadingProps) {
  const anchor = away === 1 ? 'start' : 'end';
  return (
    <g>
      <path class="drawing-extension" d={`M${at(x)} ${y}V${AXIS}`} />
      <circle class="drawing-contact" cx={at(x)} cy={AXIS} r="5" />
      <Text x={x + away * 9} y={y} anchor={anchor} kind="drawing-strong">
        {name}
      </Text>
      <Text x={x + away * 9} y={y + 16} anchor={anchor}>
        {lean}
      </Text>
    </g>
  );
}

/** Keeps a text in the middle of x within the drawing. */
function clear(x: number): number {
  return Math.min(DRAWING_WIDTH - 44, Math.max(44, x));
}
