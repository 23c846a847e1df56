import { type ComponentChild, type ComponentChildren, Fragment, isValidElement } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

interface InTurnsProps {
  /** Each is a piece of its own; so is each of a list. */
  readonly children: readonly ComponentChildren[];
  /** Told once all of them are there. */
  readonly onWhole?: () => void;
}

/**
 * Its children, top first: at its first showing each comes a frame after the one above it, so that
 * no screen keeps a finger waiting until all of it is drawn. From then on they are drawn together.
 */
export function InTurns({ children, onWhole }: InTurnsProps) {
  const pieces = children.flatMap((child, place) => piecesOf(child, place));
  const known = useRef<ReadonlySet<string>>(new Set());
  const [, goOn] = useState(0);
  const [next, ...later] = pieces.filter(({ id }) => !known.current.has(id));
  const shown = pieces.filter(({ id }) => id === next?.id || known.current.has(id));
  known.current = new Set(shown.map(({ id }) => id));
  useEffect(() => {
    if (later.length > 0) goOn((turn) => turn + 1);
    else onWhole?.();
  }, [later.map(({ id }) => id).join()]);
  return shown.map(({ id, child }) => <Fragment key={id}>{child}</Fragment>);
}

interface Piece {
  /** What it is told by among the others, whichever of them are there. */
  readonly id: string;
  readonly child: ComponentChild;
}

/** What is to be seen of `child`, or of each in a list: nothing takes no turn. */
function piecesOf(child: ComponentChildren, place: number, within = ''): readonly Piece[] {
  if (Array.isArray(child)) return child.flatMap((one, at) => piecesOf(one, at, `${place} `));
  if (child === null || child === undefined || typeof child === 'boolean') return [];
  const key = isValidElement(child) ? child.key : undefined;
  return [{ id: `${within}${key ?? place}`, child }];
}
