import { useMemo } from 'preact/hooks';
import { LocationProvider, lazy, Route, Router, useLocation } from 'preact-iso';
import { Arrivals } from './screens/arrivals';
import { BenchScreen } from './screens/bench-screen';
import { loadScreen } from './screens/load-screens';
import { Message } from './screens/message';
import { Notices } from './screens/notices';
import { ROUTES } from './screens/paths';
import { ScreenBoundary } from './screens/screen-boundary';
import { Keypad } from './widgets/keypad';

// The bench is there at once; the other screens come after it, and all of them are kept for offline use.
const KitScreen = lazy(loadScreen.kit);
const DrawerScreen = lazy(loadScreen.drawer);
const RatesScreen = lazy(loadScreen.rates);
const PartScreen = lazy(loadScreen.part);
const DrawingScreen = lazy(loadScreen.drawing);
const PlateScreen = lazy(loadScreen.plate);
const FilesScreen = lazy(loadScreen.files);
const RecordScreen = lazy(loadScreen.record);
const TableScreen = lazy(loadScreen.table);
const WorkScreen = lazy(loadScreen.work);
const ComparatorsScreen = lazy(loadScreen.comparators);
const CompareScreen = lazy(loadScreen.compare);

function Lost() {
  return <Message title="Highedge" text="There is nothing at this address." />;
}

/**
 * Takes the focus off a screen that is about to go. With the focus still in it, the browser would lay
 * out the old and the new screen together before it takes the old one away.
 */
function FocusLeaves() {
  const { path } = useLocation();
  useMemo(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  }, [path]);
  return null;
}

/** Which screen shows at which address. */
export function App() {
  return (
    <LocationProvider>
      <FocusLeaves />
      <ScreenBoundary>
        <Router>
          <Route path={ROUTES.bench} component={BenchScreen} />
          <Route path={ROUTES.kit} component={KitScreen} />
          <Route path={ROUTES.files} component={FilesScreen} />
          <Route path={ROUTES.drawer} component={DrawerScreen} />
          <Route path={ROUTES.rates} component={RatesScreen} />
          <Route path={ROUTES.part} component={PartScreen} />
          <Route path={ROUTES.drawing} component={DrawingScreen} />
          <Route path={ROUTES.plate} component={PlateScreen} />
          <Route path={ROUTES.record} component={RecordScreen} />
          <Route path={ROUTES.table} component={TableScreen} />
          <Route path={ROUTES.work} component={WorkScreen} />
          <Route path={ROUTES.comparators} component={ComparatorsScreen} />
          <Route path={ROUTES.compare} component={CompareScreen} />
          <Route default component={Lost} />
        </Router>
      </ScreenBoundary>
      <Arrivals />
      <Keypad />
      <Notices />
    </LocationProvider>
  );
}
