import { DialIndicator } from './dial-indicator';
import { ArrowHead } from './dimension';
import { Drawing } from './drawing';
import { DRAWING_WIDTH } from './geometry';
import { Text } from './text';

interface PlusOfDialProps {
  readonly plus: 'pushed in' | 'let out';
}

const LEVEL = 38;
const FACE = 96;
const DIAL = 190;
const PILLAR = 236;

/** Which way the face moves the plunger where the dial goes to plus, and where to minus. */
export function PlusOfDial({ plus }: PlusOfDialProps) {
  const [towardsDial, away] = plus === 'pushed in' ? ['+', '−'] : ['−', '+'];
  const label = `Plunger pushed in: the dial goes to ${plus === 'pushed in' ? 'plus' : 'minus'}.`;
  return (
    <Drawing height={76} label={label}>
      <path class="drawing-metal" d={`M${FACE - 46} 8H${FACE}V68H${FACE - 46}Z`} />
      <path class="drawing-tool" d={`M${PILLAR - 4} 4h8v68h-8Z`} />
      <DialIndicator dial={{ x: DIAL, y: LEVEL }} tip={{ x: FACE, y: LEVEL }} pillar={PILLAR} />
      <Arrow from={FACE + 6} to={FACE + 34} y={18} text={towardsDial} />
      <Arrow from={FACE + 34} to={FACE + 6} y={60} text={away} />
      <Text x={DRAWING_WIDTH - 8} y={18} anchor="end" kind="drawing-soft">
        pushed in
      </Text>
      <Text x={DRAWING_WIDTH - 8} y={60} anchor="end" kind="drawing-soft">
        let out
      </Text>
    </Drawing>
  );
}

interface ArrowProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly text: string;
}

function Arrow({ from, to, y, text }: ArrowProps) {
  return (
    <g>
      <path class="drawing-dimension" d={`M${from} ${y}H${to}`} />
      <ArrowHead tip={{ x: to, y }} tail={{ x: from, y }} />
      <Text x={Math.max(from, to) + 14} y={y} kind="drawing-strong">
        {text}
      </Text>
    </g>
  );
}
