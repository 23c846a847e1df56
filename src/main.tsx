import './own-scripts';
import { render } from 'preact';
import { App } from './app';
import { followOtherWindows } from './state/follow';
import { askBeforeLeaving } from './state/leaving';
import { openShop } from './state/shop';
import './updates';
import './widgets/styles.css';

const root = document.getElementById('app');
if (root === null) throw new Error('The page has no place for the app');
render(<App />, root);
void openShop();
followOtherWindows();
askBeforeLeaving();
