import './mark.css';

interface MarkProps {
  /** Width and height, CSS px. */
  readonly size: number;
  readonly label?: string;
}

/** The mark of the app: a block that leans on its line, and the edge that stands high. */
export function Mark({ size, label }: MarkProps) {
  const shared = { width: size, height: size, viewBox: '40 34 432 432' };
  return label === undefined ? (
    <svg {...shared} aria-hidden="true">
      <Block />
    </svg>
  ) : (
    <svg {...shared} role="img" aria-label={label}>
      <Block />
    </svg>
  );
}

function Block() {
  return (
    <g>
      <path class="mark-line" d="M68 418H444" />
      <path class="mark-block" d="M104 386H328L384 152H160Z" />
      <path class="mark-high" d="M164 134L404 68L388 134Z" />
    </g>
  );
}
