import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A component whose code is loaded when it is first shown; until then there is nothing in its place. */
export function loadedWhenShown<P extends object>(
  load: () => Promise<ComponentType<P>>,
): ComponentType<P> {
  let loaded: ComponentType<P> | undefined;
  return function LoadedWhenShown(props: P) {
    const [Part, show] = useState(() => loaded);
    useEffect(() => {
      if (loaded !== undefined) return;
      // Where it cannot be loaded, a notice about the missing piece is shown already.
      load().then(
        (part) => {
          loaded = part;
          show(() => part);
        },
        () => {},
      );
    }, []);
    return Part === undefined ? null : <Part {...props} />;
  };
}
