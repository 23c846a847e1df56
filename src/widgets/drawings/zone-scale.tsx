import type { Verdict } from '../../core/verdict/conformity';
import { Drawing } from './drawing';
import { axisOver } from './error-axis';
import { ErrorBar } from './error-bar';
import { ErrorScale } from './error-scale';
import { LINE } from './geometry';

export interface ZoneScaleProps {
  /** In any unit, the same as that of the value. */
  readonly limit: number;
  /** Text at the limit line. */
  readonly limitText: string;
  readonly value: number;
  /** The ends of the whisker. */
  readonly low: number;
  readonly high: number;
  readonly verdict: Verdict;
  /** Where the value stands beside it in words already, it needs none. */
  readonly label?: string;
}

const BAR = 16;
const REACH = BAR / 2 + 4;

/** One value against its limit: how far in or out it is, and whether its doubt reaches over. */
export function ZoneScale({ limit, limitText, verdict, label, ...error }: ZoneScaleProps) {
  const axis = axisOver(limit, [error]);
  const y = REACH + 2;
  const foot = 2 * REACH + 5;
  return (
    <Drawing height={foot + LINE} label={label}>
      <ErrorBar axis={axis} error={{ ...error, verdict }} y={y} height={BAR} />
      <ErrorScale axis={axis} text={limitText} bars={[y]} reach={REACH} foot={foot} />
    </Drawing>
  );
}
