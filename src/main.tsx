import './own-scripts';
import { render } from 'preact';
import { App } from './app';
import { followOtherWindows } from './state/follow';
import { askBeforeLeaving } from './state/leaving';
import { openShop } from './state/shop';
import './updates';
import { listenToGauge } from './widgets/gauge-cable';
import './widgets/styles.css';

const root = document.getElementById('app');
if (root === null) throw new Error('The page has no place for the app');
listenToGauge();
render(<App />, root);
void openShop();
followOtherWindows();
askBeforeLeaving();
