import type { Verdict } from '../../core/verdict/conformity';
import { VERDICT_LABELS } from '../../words/verdicts';
import { Drawing } from './drawing';
import { axisOver } from './error-axis';
import { ErrorBar } from './error-bar';
import { ErrorScale } from './error-scale';
import { boldWidth, DRAWING_WIDTH, LINE, textWidth } from './geometry';
import { Text } from './text';

/** An error with its doubt, in the unit of the limit. */
export interface ComparedError {
  readonly name: string;
  readonly value: number;
  /** The ends of the whisker. */
  readonly low: number;
  readonly high: number;
  /** The value as it is to be read. */
  readonly text: string;
  readonly verdict: Verdict;
}

interface BeforeAfterProps {
  /** In any unit, the same as that of the items. */
  readonly limit: number;
  /** Text at the limit line; 'limit' where left out. */
  readonly limitText?: string;
  readonly items: readonly ComparedError[];
  readonly label?: string;
}

const BAR = 18;
const SPACE = 18;
const MARGIN = 6;

/** Errors against their limit, one bar each on one scale. */
export function BeforeAfter({ limit, limitText = 'limit', items, label }: BeforeAfterProps) {
  const axis = axisOver(limit, items);
  // Name, value and verdict stand on one line where they all fit.
  const lines = items.every((item) => widthOf(item) <= DRAWING_WIDTH - 2 * MARGIN) ? 1 : 2;
  const step = lines * LINE + BAR + SPACE;
  const bars = items.map((_, index) => index * step + lines * LINE + 7 + BAR / 2);
  const foot = items.length * step + 2;
  return (
    <Drawing height={foot + LINE + 2} label={label}>
      {items.map((item, index) => (
        <g key={`${index} ${item.name}`}>
          <ItemTexts item={item} y={index * step + LINE / 2} lines={lines} />
          <ErrorBar axis={axis} error={item} y={bars[index] ?? 0} height={BAR} />
        </g>
      ))}
      <ErrorScale axis={axis} text={limitText} bars={bars} reach={BAR / 2 + 5} foot={foot} />
    </Drawing>
  );
}

const KINDS: Readonly<Record<Verdict, string>> = {
  in: 'drawing-in',
  out: 'drawing-out',
  'too close to call': 'drawing-close',
};

const GAP = 12;

function widthOf({ name, text, verdict }: ComparedError): number {
  return boldWidth(name) + textWidth(text) + boldWidth(VERDICT_LABELS[verdict]) + 2 * GAP;
}

interface ItemTextsProps {
  readonly item: ComparedError;
  readonly y: number;
  readonly lines: number;
}

/** The name, and after or under it the value; the verdict at the end of the last line. */
function ItemTexts({ item: { name, text, verdict }, y, lines }: ItemTextsProps) {
  const last = y + (lines - 1) * LINE;
  return (
    <g>
      <Text x={MARGIN} y={y} anchor="start" kind="drawing-strong">
        {name}
      </Text>
      <Text x={lines === 1 ? MARGIN + boldWidth(name) + GAP : MARGIN} y={last} anchor="start">
        {text}
      </Text>
      <Text x={DRAWING_WIDTH - MARGIN} y={last} anchor="end" kind={KINDS[verdict]}>
        {VERDICT_LABELS[verdict]}
      </Text>
    </g>
  );
}
