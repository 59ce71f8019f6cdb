import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import type { Quadrilateral } from './quadrilateral.ts';
import type { CornerName } from './readings.ts';

/** The end of a panel where a cut runs from the front edge to the back edge. */
export type PanelEnd = 'right' | 'left';
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
  /** The one end to move, with least wood lost; null when the cut is square. */
  readonly move: GuideMove | null;
  /** Wood taken off the longer of the two edges, mm. */
  readonly lost: number;
  /** Both ends, half the way each, the opposite way: the cut turns about its middle. Null where wood is missing. */
  readonly sayShared: Phrase | null;
}

const ends = { right: { front: 'B', back: 'C', outward: 1 }, left: { front: 'A', back: 'D', outward: -1 } } as const;

/** The corner at the other end of the edge along which a corner moves. */
const others = { A: 'B', B: 'A', C: 'D', D: 'C' } as const;

/** A move in words. */
export const sayMove = (corner: CornerName, towards: boolean, distance: number): Phrase =>
  phrase`${corner} ${mm(distance)} ${towards ? 'towards' : 'away from'} ${others[corner]}`;

/**
 * How to move the guide for a cut so that it stands square to the front edge.
 *
 * @param shape corners in mm
 * @param end which end of the panel
 * @param state whether the line is only marked or already sawn
 * @returns the end of the guide to move, which way and how far in mm; the same shared by both ends in words
 * @valid a straight cut from the front edge to the back edge
 * @example correctionCut(corners([1000, 0], [1002, 500], [0, 500]), 'right', 'line').value
 *   // => { move: { corner: 'C', other: 'D', towards: true, distance: 2.0 } }
 * @source plane geometry; that a sawn edge keeps its short corner is common practice
 */
export function correctionCut(shape: Quadrilateral, end: PanelEnd, state: CutState): Worked<CutCorrection> {
  const { front, back, outward } = ends[end];
  const { C, D } = shape;
  const run = (C.x - D.x) / Math.hypot(C.x - D.x, C.y - D.y);
  const outBy = (shape[front].x - shape[back].x) * outward;
  const move = (corner: CornerName, by: number): GuideMove => ({
    corner,
    other: others[corner],
    towards: by < 0,
    distance: Math.abs(by) / (corner === front ? 1 : run),
  });
  const keepBack = state === 'sawn' && outBy > 0;
  const one = keepBack ? move(front, -outBy) : move(back, outBy);
  const square = one.distance < 1e-6;
  const half = Math.abs(outBy) / 2;
  const sayShared = phrase`Or share it: ${sayMove(back, outBy < 0, half / run)}, ${sayMove(front, outBy > 0, half)}.`;
  return {
    value: {
      move: square ? null : one,
      lost: one.towards ? one.distance : 0,
      sayShared: square || state === 'sawn' ? null : sayShared,
    },
    working: {
      steps: [
        {
          finds: `lean of the ${end}-hand cut`,
          by: phrase`its back end, off the square line from its front end`,
          gives: mm(Math.abs(outBy)),
        },
        {
          finds: `move at ${one.corner}`,
          by: keepBack
            ? phrase`no wood left at the back end: the front end comes in as much`
            : phrase`the lean, along the back edge`,
          gives: mm(one.distance),
        },
      ],
      holds: phrase`Straight front edge. Cut proud, try, then cut to the line.`,
      sources: ['geometry', 'common-practice'],
    },
  };
}
