import { sumOf } from '../../core/answer/sum-of.ts';
import type { Piece } from './piece.ts';

/** How many parts a piece has: a pair of sides is two. */
export const partCount = ({ parts }: Pick<Piece, 'parts'>): number => sumOf(parts, ({ quantity }) => quantity);
