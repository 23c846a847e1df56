import { ArrowHead } from './dimension';
import { at, LINE, type Point } from './geometry';
import { spread } from './spread';
import { Text } from './text';

interface HeightRuleProps {
  readonly x: number;
  /** The y that heights count from. */
  readonly zero: number;
  /** Points of the face, each with the text of its height. */
  readonly marks: readonly { readonly from: Point; readonly text: string }[];
}

/** Heights as running dimensions: one line up from the plate, an arrow and a text at each. */
export function HeightRule({ x, zero, marks }: HeightRuleProps) {
  if (marks.length === 0) return null;
  const ys = marks.map(({ from }) => from.y);
  const texts = spread(ys, LINE, LINE / 2, zero - LINE / 2);
  return (
    <g>
      <circle class="drawing-origin" cx={at(x)} cy={at(zero)} r="3.5" />
      <path class="drawing-dimension" d={`M${at(x)} ${at(zero - 3.5)}V${at(Math.min(...ys))}`} />
      {marks.map(({ from, text }, index) => {
        const out = from.x > x ? -1 : 1;
        const y = texts[index] ?? from.y;
        return (
          <g key={`${index} ${text}`}>
            <path class="drawing-extension" d={`M${at(from.x)} ${at(from.y)}H${at(x)}`} />
            <path
              class="drawing-dimension"
              d={`M${at(x)} ${at(from.y)}h${out * 3}L${at(x + out * 8)} ${at(y)}`}
            />
            <ArrowHead
              tip={{ x, y: from.y }}
              tail={{ x, y: Math.min(...ys.filter((one) => one > from.y), zero) }}
            />
            <Text x={x + out * 11} y={y} anchor={out === 1 ? 'start' : 'end'}>
              {text}
            </Text>
          </g>
        );
      })}
    </g>
  );
}
