import { at, type Point } from './geometry';

interface ContactPointProps {
  readonly point: Point;
  /** True for the one that is being read. */
  readonly lit: boolean;
}

/** A point of a face that is touched. */
export function ContactPoint({ point, lit }: ContactPointProps) {
  const [cx, cy] = [at(point.x), at(point.y)];
  if (!lit) return <circle class="drawing-contact" cx={cx} cy={cy} r="4" />;
  return (
    <g>
      <circle class="drawing-ring" cx={cx} cy={cy} r="9" />
      <circle class="drawing-contact-lit" cx={cx} cy={cy} r="4.5" />
    </g>
  );
}
