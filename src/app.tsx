import { LocationProvider, lazy, Route, Router } from 'preact-iso';
import { Arrivals } from './screens/arrivals';
import { BenchScreen } from './screens/bench-screen';
import { Message } from './screens/message';
import { Notices } from './screens/notices';
import { ROUTES } from './screens/paths';
import { ScreenBoundary } from './screens/screen-boundary';
import { Keypad } from './widgets/keypad';

// The bench is there at once; the other screens come after it, and all of them are kept for offline use.
const KitScreen = lazy(async () => (await import('./screens/kit/kit-screen')).KitScreen);
const DrawerScreen = lazy(async () => (await import('./screens/kit/drawer-screen')).DrawerScreen);
const RatesScreen = lazy(async () => (await import('./screens/rates-screen')).RatesScreen);
const PartScreen = lazy(async () => (await import('./screens/part-screen')).PartScreen);
const DrawingScreen = lazy(
  async () => (await import('./screens/drawing/drawing-screen')).DrawingScreen,
);
const PlateScreen = lazy(async () => (await import('./screens/plate/plate-screen')).PlateScreen);
const FilesScreen = lazy(async () => (await import('./screens/files/files-screen')).FilesScreen);
const RecordScreen = lazy(
  async () => (await import('./screens/record/record-screen')).RecordScreen,
);
const TableScreen = lazy(async () => (await import('./screens/table/table-screen')).TableScreen);
const WorkScreen = lazy(async () => (await import('./screens/work/work-screen')).WorkScreen);
const ComparatorsScreen = lazy(
  async () => (await import('./screens/comparators-screen')).ComparatorsScreen,
);
const CompareScreen = lazy(
  async () => (await import('./screens/story/compare-screen')).CompareScreen,
);

function Lost() {
  return <Message title="Highedge" text="There is nothing at this address." />;
}

/** Which screen shows at which address. */
export function App() {
  return (
    <LocationProvider>
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
