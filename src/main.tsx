import './own-scripts';
import { effect } from '@preact/signals';
import { options, render } from 'preact';
import { App } from './app';
import { loadAhead } from './screens/load-screens';
import { followOtherWindows } from './state/follow';
import { whenIdle } from './state/idle';
import { askBeforeLeaving } from './state/leaving';
import { openShop } from './state/open-shop';
import { offlineReady, offlineRefused, storeForOffline } from './updates';
import { listenToGauge } from './widgets/gauge-cable';
import { inItsTurn } from './widgets/in-its-turn';
import { noteScrollPlaces } from './widgets/scroll-places';
import './widgets/styles.css';

const root = document.getElementById('app');
if (root === null) throw new Error('The page has no place for the app');
options.debounceRendering = inItsTurn;

/** How long the first screen stands before the browser has to store all of the app beside it, ms. */
const STANDS = 500;

// Each in a turn of its own, as nothing is to keep the page from answering for long. Until it is drawn
// the page shows the title band that index.html has.
setTimeout(() => {
  listenToGauge();
  noteScrollPlaces();
  void openShop();
  followOtherWindows();
  askBeforeLeaving();
});
setTimeout(() => {
  render(<App />, root);
  setTimeout(() => whenIdle(storeForOffline), STANDS);
});
// Until all is on this device, the network is for what is to be seen and for storing the rest; where
// nothing is stored, the pieces are loaded ahead all the same: no tap is to wait for the network.
// Where that does not work, a notice about the missing piece is shown already.
effect(() => {
  if (offlineReady.value || offlineRefused.value) loadAhead().catch(() => {});
});
