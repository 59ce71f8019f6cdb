import { render } from 'preact';
import { followInstall } from './app/install.ts';
import { followRoute } from './app/routes.ts';
import { Shell } from './app/shell.tsx';
import { followShop } from './app/shop.ts';
import { followUpdates } from './app/updates.ts';
import { whenQuiet } from './app/when-quiet.ts';
import { screens } from './screens/index.ts';
import './ui/tokens.css';
import './ui/base.css';

followRoute();
// When the records can't be read, the shell says why; the screens still open with the shop as last seen.
followShop().catch(() => {});
const root = document.getElementById('app');
if (root) render(<Shell screens={screens} />, root);
followInstall();
// Nothing of this is needed for the first screen or its first tap.
whenQuiet(() => {
  void followUpdates();
  void import('./app/housekeeping.ts').then(({ keepHouse }) => keepHouse());
  // The other screens come in one file: with it here, each opens at once.
  void screens.others();
});
