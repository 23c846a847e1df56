import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { DrawerItem, DrawerKind } from '../../entry/instruments';
import { problemsOf } from '../../entry/read-instrument';
import { addItem, drawer, lastTakenOut, putBackItem, removeItem } from '../../state/drawer';
import { loading } from '../../state/shop';
import { Fold } from '../../widgets/fold';
import { Page } from '../../widgets/page';
import { itemLabel, KIND_NAMES } from '../../words/instruments';
import { useCameFrom } from '../came-from';
import { Message } from '../message';
import { to } from '../paths';
import { ItemFields } from './item-fields';

const KINDS = Object.keys(KIND_NAMES) as readonly DrawerKind[];

/** Everything of the shop's that a kit is made up of: entered here once, chosen after. */
export function DrawerScreen() {
  const [added, setAdded] = useState<string>();
  const from = useCameFrom();
  // What is changed must be what lies in the database.
  if (loading.value === 'waiting') return <Message title="The drawer" text="Opening…" />;
  return (
    <Page title="The drawer" back={{ to: to.kit(from), name: 'the kit' }} wide>
      <p class="soft">
        Put in here what you read and work with, once; then choose it for a kit, or for one setup at
        the plate. None of it is needed to begin: a kit has figures of its own.
      </p>
      <div class="cards">
        {KINDS.map((kind) => (
          <section key={kind} class="sheet" aria-label={KIND_NAMES[kind]}>
            <div class="sheet-head">
              <h2>{KIND_NAMES[kind]}</h2>
              <button
                type="button"
                class="button"
                aria-label={`Add: ${KIND_NAMES[kind]}`}
                onClick={() => setAdded(addItem(kind).id)}
              >
                Add
              </button>
            </div>
            <TakenOut kind={kind} />
            {drawer.value
              .filter((item) => item.kind === kind)
              .map((item) => (
                <Item key={item.id} item={item} isNew={item.id === added} />
              ))}
          </section>
        ))}
      </div>
    </Page>
  );
}

/** Says what has just been taken out, with the way to have it back. */
function TakenOut({ kind }: { readonly kind: DrawerKind }) {
  const taken = lastTakenOut.value;
  if (taken?.item.kind !== kind) return null;
  return (
    <p class="note" role="status">
      {itemLabel(taken.item)} is removed.{' '}
      <button type="button" class="button" onClick={() => putBackItem(taken)}>
        Put it back
      </button>
    </p>
  );
}

function Item({ item, isNew }: { readonly item: DrawerItem; readonly isNew: boolean }) {
  const problems = problemsOf(item);
  const fields = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (isNew) fields.current?.querySelector('input')?.focus();
  }, [isNew]);
  return (
    <Fold summary={itemLabel(item)} open={isNew || problems.size > 0}>
      <div class="stack" ref={fields}>
        <ItemFields item={item} problems={problems} />
        <button
          type="button"
          class="button"
          aria-label={`Remove ${itemLabel(item)}`}
          onClick={() => removeItem(item)}
        >
          Remove
        </button>
      </div>
    </Fold>
  );
}
