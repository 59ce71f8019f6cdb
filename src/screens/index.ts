import type { Screens } from '../app/shell.tsx';

/** Every screen by the name in its address. */
export const screens: Screens = {
  bench: () => import('./bench/bench.tsx'),
  shop: () => import('./shop/shop.tsx'),
};
