import type { ComponentType } from 'preact';
import { useMemo } from 'preact/hooks';
import { LocationProvider, lazy, Route, Router, useLocation } from 'preact-iso';
import { Arrivals } from './screens/arrivals';
import { BenchScreen } from './screens/bench-screen';
import { loadScreen } from './screens/load-screens';
import { Message } from './screens/message';
import { Notices } from './screens/notices';
import { ROUTES } from './screens/paths';
import { ScreenBoundary } from './screens/screen-boundary';
import { Keypad } from './widgets/keypad/keypad';
import { arriveAtEntry } from './widgets/scroll-places';

// The bench is there at once; the other screens come after it, and all of them are kept for offline use.
const SCREENS = (Object.keys(loadScreen) as (keyof typeof loadScreen)[]).map((name) => ({
  path: ROUTES[name],
  component: lazy<ComponentType>(loadScreen[name]),
}));

function Lost() {
  return <Message title="Highedge" text="There is nothing at this address." />;
}

/**
 * Says where one has come to, and takes the focus off a screen that is about to go. With the focus still in it, the browser would lay
 * out the old and the new screen together before it takes the old one away.
 */
function ScreenGoes() {
  const { path, url } = useLocation();
  useMemo(arriveAtEntry, [url]);
  useMemo(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  }, [path]);
  return null;
}

/**
 * Which screen shows at which address. All of it is drawn at once: pieces that came later would leave the
 * band of index.html standing beside a screen whose code is still on its way.
 */
export function App() {
  return (
    <LocationProvider>
      <ScreenGoes />
      <ScreenBoundary>
        <Router>
          <Route path={ROUTES.bench} component={BenchScreen} />
          {SCREENS.map(({ path, component }) => (
            <Route key={path} path={path} component={component} />
          ))}
          <Route default component={Lost} />
        </Router>
      </ScreenBoundary>
      <Arrivals />
      <Keypad />
      <Notices />
    </LocationProvider>
  );
}
