import type { Phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { cornersToMove } from '../../core/square/corners-to-move.ts';
import { type ClampCorrection, correctionClamps } from '../../core/square/correction-clamps.ts';
import { type CutCorrection, correctionCut, type GuideMove, type PanelEnd } from '../../core/square/correction-cut.ts';
import type { Squareness } from '../../core/square/squareness.ts';
import type { Situation } from './square-form.ts';

export interface EndCorrection {
  readonly end: PanelEnd;
  readonly move: GuideMove;
  readonly cut: Worked<CutCorrection>;
}

/**
 * - `say`: nothing to move, or not known yet: the words are all
 * - `cuts`: which end of the guide moves, at one end of the panel or at both
 * - `squeeze`: which diagonal to squeeze
 */
export type Correction =
  | { readonly kind: 'say'; readonly say: Phrase }
  | { readonly kind: 'cuts'; readonly ends: readonly EndCorrection[] }
  | { readonly kind: 'squeeze'; readonly clamps: Worked<ClampCorrection> };

const endAt = { C: 'right', D: 'left' } as const;

/** What to do about it, by what stands before the maker. */
export function correctionOf(found: Squareness, situation: Situation, springBack: number): Correction {
  const { shape, closing, say, fitted } = found;
  if (shape === 'undetermined' || shape === 'square' || !closing.consistent) return { kind: 'say', say };
  if (situation === 'clamps') {
    const clamps = correctionClamps(fitted, shape, springBack);
    return isProblem(clamps) ? { kind: 'say', say: clamps.message } : { kind: 'squeeze', clamps };
  }
  const ends = cornersToMove(found).flatMap((corner) => {
    const end = endAt[corner];
    const cut = correctionCut(fitted, end, situation === 'sawn' ? 'sawn' : 'line');
    return cut.value.move ? [{ end, move: cut.value.move, cut }] : [];
  });
  return ends.length > 0 ? { kind: 'cuts', ends } : { kind: 'say', say };
}
