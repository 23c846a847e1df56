import { at, type Point } from './geometry';

interface DialIndicatorProps {
  /** The middle of the dial; level with the tip unless that is too near the plate. */
  readonly dial: Point;
  /** Where the plunger touches. */
  readonly tip: Point;
  /** The x of the pillar that carries it. */
  readonly pillar: number;
}

export const DIAL_RADIUS = 17;

/** A dial with its needle, clamped to the pillar, its plunger level into the face. */
export function DialIndicator({ dial, tip, pillar }: DialIndicatorProps) {
  const { x, y } = { x: at(dial.x), y: at(dial.y) };
  const ticks = Array.from({ length: 8 }, (_, index) => {
    const [sine, cosine] = [Math.sin((index * Math.PI) / 4), Math.cos((index * Math.PI) / 4)];
    const inner = index % 2 === 0 ? 9.5 : 11.5;
    return `M${at(x + 14 * sine)} ${at(y - 14 * cosine)}L${at(x + inner * sine)} ${at(y - inner * cosine)}`;
  });
  return (
    <g>
      <path class="drawing-plunger" d={`M${x} ${y}L${at(tip.x)} ${at(tip.y)}`} />
      <path
        class="drawing-stem"
        d={`M${x} ${y}L${at(x + (tip.x - x) * 0.62)} ${at(y + (tip.y - y) * 0.62)}`}
      />
      <rect class="drawing-tool" x={at(pillar - 9)} y={at(y - 8)} width="18" height="16" rx="2" />
      <circle class="drawing-dial" cx={x} cy={y} r={DIAL_RADIUS} />
      <path class="drawing-dial-ticks" d={ticks.join('')} />
      <path class="drawing-needle" d={`M${at(x - 3)} ${at(y + 4)}L${at(x + 7)} ${at(y - 9)}`} />
      <circle class="drawing-arrow" cx={x} cy={y} r="2.2" />
    </g>
  );
}
