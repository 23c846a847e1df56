import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface FoldProps {
  readonly summary: string;
  /** Folds out whenever this comes true. */
  readonly open?: boolean;
  readonly children: ComponentChildren;
}

/** Something folded away under its summary. It is drawn only once it is folded out: most never are. */
export function Fold({ summary, open = false, children }: FoldProps) {
  const [isOpen, setOpen] = useState(open);
  useEffect(() => {
    if (open) setOpen(true);
  }, [open]);
  return (
    <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {isOpen && children}
    </details>
  );
}
