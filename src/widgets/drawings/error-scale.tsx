import type { Axis } from './error-axis';
import { at, clamp, DRAWING_WIDTH, LINE, textWidth } from './geometry';
import { Text } from './text';

interface ErrorScaleProps {
  readonly axis: Axis;
  /** At the limit. */
  readonly text: string;
  /** The y of the middle of each bar. */
  readonly bars: readonly number[];
  /** How far the lines reach over and under a bar. */
  readonly reach: number;
  readonly foot: number;
}

/** The lines of no error and of the limits across all bars, with their texts at the foot. */
export function ErrorScale({ axis, text, bars, reach, foot }: ErrorScaleProps) {
  const zero = axis.x(0);
  const y = foot + LINE / 2;
  const half = textWidth(text) / 2 + 2;
  const clear = axis.limits.every(({ x }) => Math.abs(clampedTo(x, half) - zero) > half + 10);
  const strokes = (x: number) =>
    bars.map((bar) => `M${at(x)} ${at(bar - reach)}v${2 * reach}`).join('');
  return (
    <g>
      <path class="drawing-zero" d={strokes(zero)} />
      {clear && (
        <Text x={zero} y={y} kind="drawing-soft">
          0
        </Text>
      )}
      {axis.limits.map(({ x, sign }) => (
        <g key={sign}>
          <path class="drawing-limit" d={strokes(x)} />
          <Text x={clampedTo(x, half)} y={y}>
            {sign === '+' ? text : `−${text}`}
          </Text>
        </g>
      ))}
    </g>
  );
}

/** Where a text of this half width stands so that it is not cut off. */
function clampedTo(x: number, half: number): number {
  return clamp(x, half, DRAWING_WIDTH - half);
}
