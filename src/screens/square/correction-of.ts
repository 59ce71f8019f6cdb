import type { Phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { cornersToMove } from '../../core/square/corners-to-move.ts';
import { type ClampCorrection, correctionClamps } from '../../core/square/correction-clamps.ts';
import { type CutCorrection, correctionCut } from '../../core/square/correction-cut.ts';
import type { Squareness } from '../../core/square/squareness.ts';
import type { Situation } from './square-form.ts';

/**
 * - `say`: nothing to move, or not known yet: the words are all
 * - `cuts`: which end of the guide moves, at one end of the panel or at both
 * - `squeeze`: which diagonal to squeeze
 */
export type Correction =
  | { readonly kind: 'say'; readonly say: Phrase }
  | { readonly kind: 'cuts'; readonly cuts: readonly Worked<CutCorrection>[] }
  | { readonly kind: 'squeeze'; readonly clamps: Worked<ClampCorrection> };

/** What to do about it, by what stands before the maker. */
export function correctionOf(found: Squareness, situation: Situation, springBack: number): Correction {
  const { shape, closing, say, fitted } = found;
  if (shape === 'undetermined' || shape === 'square' || !closing.consistent) return { kind: 'say', say };
  if (situation === 'clamps') {
    const clamps = correctionClamps(fitted, shape, springBack);
    return isProblem(clamps) ? { kind: 'say', say: clamps.message } : { kind: 'squeeze', clamps };
  }
  const state = situation === 'sawn' ? 'sawn' : 'line';
  const cuts = cornersToMove(found).map((back) => correctionCut(fitted, back, state));
  return cuts.length > 0 ? { kind: 'cuts', cuts } : { kind: 'say', say };
}
