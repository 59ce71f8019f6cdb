import type { Screens } from '../app/shell.tsx';
import Bench from './bench/bench.tsx';

/** Every screen by the name in its address. */
export const screens: Screens = {
  home: Bench,
  others: {
    movement: () => import('./movement/movement.tsx'),
    piece: () => import('./piece/piece.tsx'),
    shop: () => import('./shop/shop.tsx'),
    square: () => import('./square/square.tsx'),
    stock: () => import('./stock/stock.tsx'),
    breakdown: () => import('./breakdown/breakdown.tsx'),
    mill: () => import('./mill/mill.tsx'),
    glue: () => import('./glue/glue.tsx'),
    data: () => import('./data/data.tsx'),
    finish: () => import('./finish/finish.tsx'),
  },
};
