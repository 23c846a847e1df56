import { LocationProvider, Route, Router } from 'preact-iso';
import { BenchScreen } from './screens/bench-screen';
import { DrawingScreen } from './screens/drawing/drawing-screen';
import { KitScreen } from './screens/kit-screen';
import { Notices } from './screens/notices';
import { PartScreen } from './screens/part-screen';
import { ROUTES } from './screens/paths';
import { PlateScreen } from './screens/plate/plate-screen';
import { Message } from './screens/with-part';
import { WorkScreen } from './screens/work/work-screen';
import { Keypad } from './widgets/keypad';

function Lost() {
  return <Message title="Highedge" text="There is nothing at this address." />;
}

/** Which screen shows at which address. */
export function App() {
  return (
    <LocationProvider>
      <Router>
        <Route path={ROUTES.bench} component={BenchScreen} />
        <Route path={ROUTES.kit} component={KitScreen} />
        <Route path={ROUTES.part} component={PartScreen} />
        <Route path={ROUTES.drawing} component={DrawingScreen} />
        <Route path={ROUTES.plate} component={PlateScreen} />
        <Route path={ROUTES.work} component={WorkScreen} />
        <Route default component={Lost} />
      </Router>
      <Keypad />
      <Notices />
    </LocationProvider>
  );
}
