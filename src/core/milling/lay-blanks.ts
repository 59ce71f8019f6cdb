import { leaveLong } from './leave-long.ts';
import type { MillingInput, MillingPart } from './milling-input.ts';
import { type BlankWork, mark, type StripWork, unitName } from './workpiece.ts';

const place = (mm: number): string => String(Math.round(mm * 10) / 10);

/**
 * The plan's blanks as the saw cuts them, named for the bench: short ones left long where that keeps them on the
 * machines, every strip with its label.
 *
 * @param input a checked milling input, mm
 * @returns blanks in the order of the boards
 * @valid a plan that holds within its boards
 * @example layBlanks(wideLid)[0]
 *   // => { id: 'B1@0', strips: [{ label: 'B1 · lid strip 1' }, { label: 'B1 · lid strip 2' }] }
 * @source common practice (leave short parts long, crosscut last)
 */
export function layBlanks(input: MillingInput): BlankWork[] {
  const parts = new Map(input.parts.map((part) => [part.id, part]));
  const stripsSoFar = new Map<string, number>();

  const stripName = (part: MillingPart, units: readonly number[]): string => {
    const unit = unitName(part, units);
    if (!part.panel) return unit;
    const key = `${part.id}#${units.join()}`;
    const number = (stripsSoFar.get(key) ?? 0) + 1;
    stripsSoFar.set(key, number);
    return `${unit} strip ${number}`;
  };

  return input.boards.flatMap((board) => {
    const planned = input.blanks.filter((blank) => blank.board === board.id);
    const chalk = mark(board);
    return leaveLong(board, planned, input)
      .map(({ row, ...long }, index): BlankWork => {
        const id = `${board.id}@${place(long.start)}`;
        return {
          id,
          label: `${chalk} · blank ${index + 1}`,
          board,
          ...long,
          strips: (row[0]?.strips ?? []).flatMap(({ part: partId, width, spoilt }, at): StripWork | [] => {
            const part = parts.get(partId);
            if (!part) return [];
            const units = row.flatMap(({ strips }) => strips[at]?.unit ?? []);
            // A spoilt strip is named as well, so that the others keep their numbers.
            const name = stripName(part, units);
            if (spoilt) return [];
            const finished = part.panel ? width - input.shop.edgeAllowance : part.width;
            return { id: `${id}/${at + 1}`, label: `${chalk} · ${name}`, part, units, width, finished };
          }),
        };
      })
      .filter(({ strips }) => strips.length > 0);
  });
}
