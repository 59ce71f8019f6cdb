import { badNumber } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { mm, seconds } from '../answer/quantity.ts';

export interface MitredWork {
  /** A frame is mitred across its face, a case along the edge of its boards. */
  readonly kind: 'frame' | 'case';
  /** mm along the mitre that one clamp or strap must press: the board's width for a case. */
  readonly width: number;
  readonly hasStraps: boolean;
}

/** A strap presses about this much of a mitre, mm: an assumption. */
const strapCovers = 100;

/**
 * How to clamp mitred corners without pulling them open.
 *
 * @param work frame or case, width along the mitre in mm, whether there are strap clamps
 * @returns what to do, in order
 * @valid four corners of 90 degrees
 * @errors a width that makes no sense
 * @example mitreClamping({ kind: 'case', width: 300, hasStraps: true })[2]
 *   // => { text: '3 straps round all four corners, at most {0} apart.' }
 * @source common practice
 */
export function mitreClamping({ kind, width, hasStraps }: MitredWork): Outcome<readonly Phrase[]> {
  const bad = badNumber('width', 'The width of the mitre', width, 'mm', { above: 0, most: 2000 });
  if (bad) return bad;
  const size = phrase`End grain drinks: size both mitres thin, wait ${seconds(180)}, spread again.`;
  const dryRun = phrase`Try all four corners dry.`;
  const check = phrase`Just tight, measure the diagonals, push the long one in, then tighten by turns.`;
  const straps = Math.ceil(width / strapCovers);
  const todo = hasStraps
    ? [
        dryRun,
        size,
        straps === 1
          ? phrase`One strap round all four corners.`
          : phrase`${straps} straps round all four corners, at most ${mm(strapCovers)} apart.`,
        phrase`A block under the strap at each corner, hollowed at the tip.`,
        phrase`Packing under the strap in the middle of long sides, so that it presses there.`,
        check,
      ]
    : [
        phrase`Glue 45 degree blocks outside beside each corner, on paper, to split off later. Let them set.`,
        dryRun,
        size,
        kind === 'frame'
          ? phrase`One clamp across each pair of blocks, square to the mitre.`
          : phrase`A long block on both boards of each corner, clamps across it every ${mm(150)}, square to the mitre.`,
        phrase`Never with clamps along the sides alone: they slide the mitres and open the tips.`,
        check,
      ];
  return todo;
}
