import { isProblem } from '../../core/answer/problem.ts';
import { taperStretches } from '../../core/breakdown/clear-stretches.ts';
import type { ClearStretch, Part, RoughBoard, Shop, Wishes } from '../../core/breakdown/problem-types.ts';
import { narrowestWidth } from '../../core/lumber/board-width.ts';
import { straightWidth } from '../../core/milling/straight-width.ts';
import type { Board } from '../../store/records/board.ts';
import { clearStretchesOf, roughShape } from '../../store/records/board-shape.ts';

/** What a board must be good for: the shortest, longest and narrowest blank that the parts need, mm. */
export interface Need {
  readonly leastLength: number;
  readonly longest: number;
  readonly leastWidth: number;
  readonly favour: 'area' | 'length';
}

export function needOf(shop: Shop, parts: readonly Part[], wishes: Wishes): Need {
  const lengths = parts.map(({ length }) => length + shop.lengthAllowance);
  const widths = parts.map(({ panel, width }) => (panel ? shop.minStrip : width + shop.edgeAllowance));
  return {
    // Without parts there is nothing to plan; any size will do.
    leastLength: Math.min(...lengths, 12_200),
    longest: Math.max(...lengths, 1),
    leastWidth: Math.min(...widths, 1500),
    favour: wishes.longLeftovers ? 'length' : 'area',
  };
}

/** A board as the plan sees it: warp that nobody has measured is assumed, marks and crook are kept clear of, a taper is stepped. */
export function roughBoard(board: Board, need: Need): RoughBoard {
  const clear = clearOf(board, need);
  const width = clear ? Math.max(board.width, board.farWidth ?? 0) : narrowestWidth(board);
  const { thickness, length, cup, bow, twist } = roughShape({ ...board, width, farWidth: width });
  const { id, species, goodFace } = board;
  return {
    id,
    species,
    thickness,
    width,
    length,
    cup,
    bow,
    ...(twist > 0 && { twist }),
    ...(clear && { clear }),
    ...(goodFace && { goodFace }),
  };
}

/** Where a board is clear and straight; undefined where that is all of it. */
function clearOf(board: Board, need: Need): readonly ClearStretch[] | undefined {
  const { warp: { crook = 0 } = {}, width, length } = board;
  const clear = unmarked(board, need);
  if (crook === 0) return clear;
  // Straightening takes the more the longer the blank is: as much as the longest that is asked for.
  const lost = width - straightWidth(width, length, crook, Math.min(need.longest, length));
  const whole = { start: 0, length, offset: 0, width };
  return (clear ?? [whole]).flatMap((one) => (one.width > lost ? { ...one, width: one.width - lost } : []));
}

function unmarked(board: Board, need: Need): readonly ClearStretch[] | undefined {
  const { width, farWidth = width, length } = board;
  if (board.defects?.length) {
    const found = clearStretchesOf(board, need);
    return isProblem(found) ? [] : found;
  }
  if (farWidth === width) return undefined;
  // Each step still takes the longest blank, so stepping never costs a part that the board could give.
  const steps = Math.max(1, Math.floor(length / need.longest));
  const ends = Array.from({ length: steps }, (_, step) => (length * (step + 1)) / steps);
  return taperStretches(length, width, farWidth, ends);
}
