import type { Verdict } from '../../core/verdict/conformity';
import type { Axis, DoubtfulError } from './error-axis';
import { at } from './geometry';

interface ErrorBarProps {
  readonly axis: Axis;
  readonly error: DoubtfulError & { readonly verdict: Verdict };
  /** The middle of the bar. */
  readonly y: number;
  readonly height: number;
}

const KINDS: Readonly<Record<Verdict, string>> = {
  in: 'drawing-bar-in',
  out: 'drawing-bar-out',
  'too close to call': 'drawing-bar-close',
};

/** A bar from no error to the value, with its whisker. */
export function ErrorBar({ axis, error, y, height }: ErrorBarProps) {
  const { value, verdict } = error;
  const [zero, end] = [axis.x(0), axis.x(value)];
  const [low, high] = [axis.x(error.low), axis.x(error.high)];
  const cap = height / 2 - 2;
  return (
    <g>
      <rect
        class={KINDS[verdict]}
        x={at(Math.min(zero, end))}
        y={at(y - height / 2)}
        width={at(Math.max(1.5, Math.abs(end - zero)))}
        height={height}
      />
      <path
        class="drawing-whisker"
        d={`M${at(low)} ${y}H${at(high)}M${at(low)} ${y - cap}v${2 * cap}M${at(high)} ${y - cap}v${2 * cap}`}
      />
      <circle class="drawing-whisker-middle" cx={at(end)} cy={y} r="4" />
    </g>
  );
}
