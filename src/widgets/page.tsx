import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { useArrival } from './arrival';
import { isBefore } from './scroll-places';

interface PageProps {
  readonly title: string;
  /** Address of the screen above this one, with its name. */
  readonly back?: { readonly to: string; readonly name: string };
  /** What stands at the right of the title. */
  readonly side?: ComponentChildren;
  /** What the button at the right has opened: under the title, so that it is in sight wherever one has scrolled to. */
  readonly opened?: ComponentChildren;
  /** Under the title, always in sight. */
  readonly pinned?: ComponentChildren;
  /** At the left of the contents, where there is room. */
  readonly beside?: ComponentChildren;
  readonly wide?: boolean;
  readonly children: ComponentChildren;
}

/** The frame of every screen: title band, way back, contents. */
export function Page({ title, back, side, opened, pinned, beside, wide, children }: PageProps) {
  const contents = useRef<HTMLElement>(null);
  useArrival(title, contents);
  return (
    <div class={pinned ? 'page page-pinned' : 'page'}>
      <button type="button" class="skip" onClick={() => contents.current?.focus()}>
        Skip to the contents
      </button>
      <header class="band">
        <div class="band-row">
          {back && (
            <a class="band-back" href={back.to} onClick={(event) => backByHistory(event, back.to)}>
              <span aria-hidden="true">‹</span>
              <span class="hidden-label">Back to {back.name}</span>
            </a>
          )}
          <h1 id="title">{title}</h1>
          {side}
        </div>
        {opened && <div class="band-opened">{opened}</div>}
        {pinned}
      </header>
      <div class="page-body">
        {beside}
        <main
          ref={contents}
          tabIndex={-1}
          aria-labelledby="title"
          class={wide ? 'contents contents-wide' : 'contents'}
        >
          {children}
        </main>
      </div>
    </div>
  );
}

/** Where the screen that was before is the one named, the link is the browser's own way back. */
function backByHistory(event: MouseEvent, to: string): void {
  if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey || !isBefore(to)) return;
  event.preventDefault();
  // The router would follow it as a link all the same.
  event.stopPropagation();
  history.back();
}
