import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { drawnChain, type Link, openChain } from '../state/chain';
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
  const open = drawnChain.value?.part === id ? drawnChain.value : undefined;
  if (part !== undefined && open !== undefined) return <>{children(part, open.links)}</>;
  const text =
    loading.value === 'ready' && part === undefined
      ? 'There is no such part in this browser.'
      : 'Opening…';
  return <Message title="Highedge" text={text} />;
}
