import { type Outcome, problem } from '../answer/problem.ts';
import type { ClearStretch } from '../breakdown/problem-types.ts';
import type { Board } from './board.ts';
import { checkBoard } from './check-board.ts';

/** A knot, split, wane or sapwood to avoid: a rectangle on the board's face, mm. What leaves the board is ignored. */
export interface Defect {
  /** Along the board, from the near end. */
  readonly from: number;
  readonly to: number;
  /** Across the board, from the left edge, which is straight. */
  readonly left: number;
  readonly right: number;
}

export interface StretchWish {
  readonly leastLength: number;
  readonly leastWidth: number;
  /** `area`: crosscut the defects out where that leaves more. `length`: rather rip past them and keep the board long. */
  readonly favour: 'area' | 'length';
}

interface Choice {
  readonly score: number;
  readonly stretches: readonly ClearStretch[];
}

/**
 * The clear rectangles of a board that follow each other along it: the board is crosscut in thought at ends of defects,
 * and each stretch gets the widest band without a defect (the leftmost of equals). Of all ways to cut, the one with the
 * largest sum of area is taken, or, to favour length, of area × length; of equals the one with fewest stretches.
 *
 * @param board sizes in mm; a tapered one has its straight edge on the left, and a stretch is as wide as its narrow end
 * @param defects rectangles to avoid, with the margin that the maker wants around them
 * @param wish the least length and width that are of use, mm, and what to favour
 * @returns clear stretches in order along the board, none overlapping; kerfs are the breakdown's matter
 * @valid up to 100 defects
 * @errors those of `checkBoard`; more than 100 defects, one with ends the wrong way round (`defects.2`)
 * @example findClearStretches({ ...board, width: 200, length: 2400 }, [{ from: 1000, to: 1100, left: 160, right: 200 }], {
 *   leastLength: 300,
 *   leastWidth: 50,
 *   favour: 'length',
 * }) // => [{ start: 0, length: 2400, width: 160 }]
 * @source geometry
 */
export function findClearStretches(
  board: Board,
  defects: readonly Defect[],
  wish: StretchWish,
): Outcome<ClearStretch[]> {
  const bad = checkBoard(board)[0] ?? badDefects(defects);
  if (bad) return bad;
  const cuts = cutPositions(board, defects);
  const best: Choice[] = [{ score: 0, stretches: [] }];
  for (const [index, to] of cuts.entries()) {
    if (index === 0) continue;
    let choice = best[index - 1] as Choice;
    for (const [start, before] of best.entries()) {
      const from = cuts[start] as number;
      const band = to - from < wish.leastLength ? undefined : widestBand(board, defects, from, to);
      if (!band || band.right - band.left < wish.leastWidth) continue;
      const stretch = rectangle(from, to, band.left, band.right);
      const area = stretch.length * stretch.width;
      const score = before.score + (wish.favour === 'area' ? area : area * stretch.length);
      if (isBetter(score, before.stretches.length + 1, choice))
        choice = { score, stretches: [...before.stretches, stretch] };
    }
    best.push(choice);
  }
  return [...(best.at(-1) as Choice).stretches];
}

/** Better by more than the noise of binary numbers, or as good with fewer stretches. */
function isBetter(score: number, pieces: number, than: Choice): boolean {
  const noise = 1e-9 * Math.max(score, than.score);
  return score > than.score + noise || (score >= than.score - noise && pieces < than.stretches.length);
}

function cutPositions({ length }: Board, defects: readonly Defect[]): number[] {
  const ends = defects.flatMap(({ from, to }) => [from, to]).filter((at) => at > 0 && at < length);
  return [...new Set([0, ...ends, length])].sort((a, b) => a - b);
}

/** The widest band across the board that no defect between `from` and `to` touches. */
function widestBand(board: Board, defects: readonly Defect[], from: number, to: number) {
  const { width, farWidth = width, length } = board;
  const widthAt = (at: number) => width + ((farWidth - width) * at) / length;
  const edge = Math.min(widthAt(from), widthAt(to));
  const inTheWay = defects.filter((defect) => defect.from < to && defect.to > from).sort((a, b) => a.left - b.left);
  let widest: { left: number; right: number } | undefined;
  let left = 0;
  for (const next of [...inTheWay, { left: edge, right: edge }]) {
    const right = Math.min(next.left, edge);
    if (right - left > (widest ? widest.right - widest.left : 0)) widest = { left, right };
    left = Math.max(left, next.right);
  }
  return widest;
}

function rectangle(from: number, to: number, left: number, right: number): ClearStretch {
  return { start: from, length: span(from, to), offset: left, width: span(left, right) };
}

/** `to - from`, never so that adding `from` again goes past `to` by the last binary digit. */
function span(from: number, to: number): number {
  const size = to - from;
  return from + size > to ? size - 2 * Number.EPSILON * to : size;
}

function badDefects(defects: readonly Defect[]) {
  if (defects.length > 100) return problem('defects', 'More than 100 defects. Join those that lie together.');
  const at = defects.findIndex(({ from, to, left, right }) => !(from <= to && left <= right));
  return at < 0 ? undefined : problem(`defects.${at}`, 'This mark has no size. Mark it again.');
}
