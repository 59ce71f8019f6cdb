import type { Board, BoardState } from './board.ts';
import type { Delivery } from './delivery.ts';
import type { Finish } from './finish.ts';
import type { Glueup } from './glueup.ts';
import type { Milling } from './milling.ts';
import type { Piece } from './piece.ts';
import type { Plan } from './plan.ts';
import type { Shop } from './shop.ts';
import type { Square } from './square.ts';
import type { Timer } from './timer.ts';

/** Every kind of record. */
export interface Kinds {
  shop: Shop;
  delivery: Delivery;
  board: Board;
  piece: Piece;
  plan: Plan;
  milling: Milling;
  square: Square;
  glueup: Glueup;
  finish: Finish;
  timer: Timer;
}

export type Kind = keyof Kinds;

interface OfPiece {
  pieceId: string;
}

/** By what records can be looked up, besides their id. */
export interface Indexes {
  shop: Record<never, never>;
  delivery: { date: string };
  board: { state: BoardState; species: string; pieceId: string; deliveryId: string; parentId: string };
  piece: Record<never, never>;
  plan: OfPiece;
  milling: OfPiece & { planId: string };
  square: OfPiece;
  glueup: OfPiece;
  finish: OfPiece;
  timer: { endsAt: number; 'for.id': string };
}

export const kinds: readonly Kind[] = [
  'shop',
  'delivery',
  'board',
  'piece',
  'plan',
  'milling',
  'square',
  'glueup',
  'finish',
  'timer',
];
