import type { Screens } from '../app/shell.tsx';
import Bench from './bench/bench.tsx';
import { questions } from './questions.ts';

/** Every screen by the name in its address. */
export const screens: Screens = {
  home: Bench,
  others: {
    stock: { question: questions.stock, load: () => import('./stock/stock.tsx') },
    piece: { question: questions.piece, load: () => import('./piece/piece.tsx') },
    movement: { question: questions.movement, load: () => import('./movement/movement.tsx') },
    wood: { question: questions.wood, load: () => import('./wood/wood.tsx') },
    breakdown: { question: questions.breakdown, load: () => import('./breakdown/breakdown.tsx') },
    mill: { question: questions.mill, load: () => import('./mill/mill.tsx') },
    square: { question: questions.square, load: () => import('./square/square.tsx') },
    glue: { question: questions.glue, load: () => import('./glue/glue.tsx') },
    finish: { question: questions.finish, load: () => import('./finish/finish.tsx') },
    sheet: { question: questions.sheet, load: () => import('./sheet/sheet.tsx') },
    shop: { question: questions.shop, load: () => import('./shop/shop.tsx') },
    data: { question: questions.data, load: () => import('./data/data.tsx') },
  },
};
