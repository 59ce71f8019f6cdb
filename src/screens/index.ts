import type { Screens } from '../app/shell.tsx';

/** Every screen by the name in its address. */
export const screens: Screens = {
  bench: () => import('./bench/bench.tsx'),
  shop: () => import('./shop/shop.tsx'),
  stock: () => import('./stock/stock.tsx'),
  piece: () => import('./piece/piece.tsx'),
  breakdown: () => import('./breakdown/breakdown.tsx'),
  mill: () => import('./mill/mill.tsx'),
  square: () => import('./square/square.tsx'),
  glue: () => import('./glue/glue.tsx'),
  finish: () => import('./finish/finish.tsx'),
  data: () => import('./data/data.tsx'),
};
