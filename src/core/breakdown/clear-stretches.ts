import type { Blank, ClearStretch, RoughBoard } from './problem-types.ts';

/** What must be known of a board. */
type Clear = Pick<RoughBoard, 'length' | 'width' | 'clear'>;

/**
 * Where blanks may lie on a board, in order along it: its clear stretches, or the whole board.
 *
 * @param board mm
 * @returns stretches, mm
 * @valid straight boards; a tapered one says its stretches
 * @example clearStretches(smallProblem.boards[0]) // => [{ start: 0, length: 2450, offset: 0, width: 210 }]
 * @source geometry
 */
export function clearStretches(board: Clear): readonly ClearStretch[] {
  const clear = board.clear ?? [{ start: 0, length: board.length, offset: 0, width: board.width }];
  return [...clear].sort((a, b) => a.start - b.start);
}

/**
 * The clear stretch of a board that a blank lies on.
 *
 * @param board mm
 * @param blank mm; only where it starts counts
 * @returns the stretch, or undefined when the blank starts beyond the last one
 * @valid a blank that lies within one stretch
 * @example clearOf(smallProblem.boards[0], { start: 100 }) // => { start: 0, width: 210 }
 * @source geometry
 */
export const clearOf = (board: Clear, blank: Pick<Blank, 'start'>): ClearStretch | undefined =>
  clearStretches(board).find(({ start, length }) => blank.start < start + length);

/**
 * A tapered board as stretches of one width each, stepped so that every step lies inside the taper.
 *
 * @param length of the board, mm
 * @param widthAtStart mm
 * @param widthAtEnd mm
 * @param ends where the steps end, mm from the start end; the last is the board's length
 * @returns clear stretches; the straight edge is the left one
 * @valid an even taper with one straight edge
 * @example taperStretches(2400, 240, 200, [1200, 2400])
 *   // => [{ start: 0, length: 1200, width: 220 }, { start: 1200, length: 1200, width: 200 }]
 * @source geometry
 */
export function taperStretches(
  length: number,
  widthAtStart: number,
  widthAtEnd: number,
  ends: readonly number[],
): ClearStretch[] {
  const widthAt = (position: number) => widthAtStart + ((widthAtEnd - widthAtStart) * position) / length;
  return ends.map((end, index) => {
    const start = ends[index - 1] ?? 0;
    return { start, length: end - start, offset: 0, width: Math.min(widthAt(start), widthAt(end)) };
  });
}
