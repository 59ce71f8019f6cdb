import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Quadrilateral } from './quadrilateral.ts';
import type { CornerName } from './readings.ts';
import { backRun, type Slides, slidesOf } from './slide.ts';

/** A line that is marked but not cut can move either way; a sawn edge can only lose wood. */
export type CutState = 'line' | 'sawn';

/** One end of the guide's move, mm. */
export interface GuideMove {
  readonly corner: CornerName;
  /** The corner at the other end of the edge along which it moves. */
  readonly other: CornerName;
  readonly towards: boolean;
  readonly distance: number;
}

export interface CutCorrection {
  readonly hand: 'right' | 'left';
  /** The one end to move, with least wood lost. */
  readonly move: GuideMove;
  /** Wood taken off the longer of the two edges, mm. */
  readonly lost: number;
  /** Both ends, half the way each, the opposite way: the cut turns about its middle. Null where wood is missing. */
  readonly sayShared: Phrase | null;
}

/** The cut that ends at each back corner: its front end, and the hand it lies on. */
const cuts = { C: { front: 'B', hand: 'right' }, D: { front: 'A', hand: 'left' } } as const;

/** The corner at the other end of the edge along which a corner moves. */
const others = { A: 'B', B: 'A', C: 'D', D: 'C' } as const;

/** A move in words, towards the corner at the other end unless it is positive. */
export const sayMove = (corner: CornerName, by: number): Phrase =>
  phrase`${corner} ${mm(Math.abs(by))} ${by <= 0 ? 'towards' : 'away from'} ${others[corner]}`;

/**
 * How to move the guide for a cut so that it stands square to the front edge.
 *
 * @param shape corners in mm
 * @param back the cut's back end, C or D
 * @param state whether the line is only marked or already sawn
 * @returns the end of the guide to move, which way and how far in mm; the same shared by both ends in words
 * @valid a straight cut from the front edge to the back edge
 * @example correctionCut(corners([1000, 0], [1002, 500], [0, 500]), 'C', 'line').value
 *   // => { move: { corner: 'C', other: 'D', towards: true, distance: 2.0 } }
 * @source plane geometry; that a sawn edge keeps its short corner is common practice
 */
export function correctionCut(shape: Quadrilateral, back: keyof Slides, state: CutState): Worked<CutCorrection> {
  const { front, hand } = cuts[back];
  const slide = slidesOf(shape)[back];
  const lean = slide * backRun(shape);
  const keepBack = state === 'sawn' && slide > 0;
  const [corner, by] = keepBack ? [front, -lean] : [back, slide];
  const move = { corner, other: others[corner], towards: by <= 0, distance: Math.abs(by) };
  const sayShared = phrase`Or share it: ${sayMove(back, slide / 2)}, ${sayMove(front, -lean / 2)}.`;
  return {
    value: {
      hand,
      move,
      lost: move.towards ? move.distance : 0,
      sayShared: state === 'sawn' ? null : sayShared,
    },
    working: {
      steps: [
        workingStep(
          `lean of the ${hand}-hand cut`,
          phrase`its back end, off the square line from its front end`,
          mm(Math.abs(lean)),
        ),
        workingStep(
          `move at ${move.corner}`,
          keepBack
            ? phrase`no wood left at the back end: the front end comes in as much`
            : phrase`the lean, along the back edge`,
          mm(move.distance),
        ),
      ],
      holds: phrase`Straight front edge. Cut proud, try, then cut to the line.`,
      sources: ['geometry', 'common-practice'],
    },
  };
}
