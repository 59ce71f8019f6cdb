import type { CutBlank } from '../breakdown/problem-types.ts';
import { type LongBlank, leaveLong } from './leave-long.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import { type BlankWork, mark, type StripWork, unitName } from './workpiece.ts';

const place = (mm: number): string => String(Math.round(mm * 10) / 10);

/**
 * The plan's blanks as the saw cuts them, named for the bench: short ones left long where that keeps them on the
 * machines, every strip with its label.
 *
 * - `input`: a checked milling input, mm
 *
 * Result: blanks in the order of the boards. Errors: none.
 * Valid for a plan that holds within its boards.
 *
 * Example: a blank at 1030 on board B3 with one strip for `lid` is `B3@1030`, its strip `B3 · lid strip 1`.
 *
 * Source: common practice (leave short parts long, crosscut last).
 */
export function layBlanks(input: MillingInput): BlankWork[] {
  const parts = new Map(input.parts.map((part) => [part.id, part]));
  const stripsSoFar = new Map<string, number>();
  const perBoard = new Map<string, number>();

  const layStrip = (long: LongBlank, blankId: string, chalk: string, index: number): StripWork | null => {
    const planned = long.strips[index];
    const part = planned && parts.get(planned.part);
    if (!planned || !part) return null;
    const units = long.units[index] ?? [planned.unit];
    // A spoilt strip is named as well, so that the others keep their numbers.
    const name = stripName(part, units);
    if (planned.spoilt) return null;
    return {
      id: `${blankId}/${index + 1}`,
      label: `${chalk} · ${name}`,
      part,
      units,
      width: planned.width,
      finished: part.panel ? planned.width - input.shop.edgeAllowance : part.width,
    };
  };

  const stripName = (part: MillingPart, units: readonly number[]): string => {
    const unit = unitName(part, units);
    if (!part.panel) return unit;
    const key = `${part.id}#${units.join()}`;
    const number = (stripsSoFar.get(key) ?? 0) + 1;
    stripsSoFar.set(key, number);
    return `${unit} strip ${number}`;
  };

  return input.boards.flatMap((board) => {
    const planned: CutBlank[] = input.blanks.filter((blank) => blank.board === board.id);
    const laid = leaveLong(board, planned, input).map((long) => {
      const id = `${board.id}@${place(long.start)}`;
      const number = (perBoard.get(board.id) ?? 0) + 1;
      perBoard.set(board.id, number);
      return {
        id,
        label: `${mark(board)} · blank ${number}`,
        board,
        start: long.start,
        length: long.length,
        strips: long.strips.flatMap((_, index) => layStrip(long, id, mark(board), index) ?? []),
        leftLong: long.leftLong,
      };
    });
    return laid.filter(({ strips }) => strips.length > 0);
  });
}
