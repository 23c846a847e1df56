import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { workOut } from '../state/answers';
import { drawnChain, type Link, latestInspection, openChain } from '../state/chain';
import { settleOpenPart } from '../state/settling';
import { loading, parts } from '../state/shop';
import type { PartRecord } from '../store/records';
import { Message } from './message';

interface WithPartProps {
  readonly id: string;
  readonly children: (part: PartRecord, links: readonly Link[]) => ComponentChildren;
}

/** Shows its children once the part and its chain are there, and says so where they are not. */
export function WithPart({ id, children }: WithPartProps) {
  useEffect(() => {
    void openChain(id);
  }, [id]);
  useEffect(() => settleOpenPart(id), [id]);
  const part = parts.value.get(id);
  const links = drawnChain.value?.part === id ? drawnChain.value.links : undefined;
  const isWorkedOut = useWorkedOut(part, links);
  if (part !== undefined && links !== undefined && isWorkedOut) return <>{children(part, links)}</>;
  const text =
    loading.value === 'ready' && part === undefined
      ? 'There is no such part in this browser.'
      : 'Opening…';
  return <Message title="Highedge" text={text} />;
}

/**
 * True once the latest readings are worked out, in a turn of their own; at once where the part was
 * open before. What is drawn then finds them known, and the page answers in between.
 */
function useWorkedOut(part: PartRecord | undefined, links: readonly Link[] | undefined): boolean {
  const isThere = part !== undefined && links !== undefined;
  const [isDone, finish] = useState(isThere);
  useEffect(() => {
    if (isDone || part === undefined || links === undefined) return;
    let turn = setTimeout(() => {
      turn = setTimeout(() => finish(true));
      try {
        const last = latestInspection(links);
        if (last !== undefined) workOut(last, part.entry);
      } catch {
        // Drawing meets the same, and there it is told.
      }
    });
    return () => clearTimeout(turn);
  }, [isThere, isDone]);
  return isDone;
}
