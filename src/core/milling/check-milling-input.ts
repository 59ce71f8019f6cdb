import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { firstWithin } from '../answer/first-within.ts';
import type { Problem } from '../answer/problem.ts';
import { sumOf } from '../answer/sum-of.ts';
import { checkBlanks } from '../breakdown/check-blanks.ts';
import { checkList, checkPart } from '../breakdown/check-problem.ts';
import type { CutBlank } from '../breakdown/problem-types.ts';
import { rippedWidth } from '../breakdown/ripped-width.ts';
import { lengths } from '../breakdown/sizes.ts';
import { boardProblem } from './flat-thickness.ts';
import { limitedMachines } from './machine-limits.ts';
import type { MillingInput } from './milling-input.ts';

/** Rounding that a plan is forgiven, in mm. */
const slack = 0.01;

/** Why the sequence can't be made from this input, if it can't. */
export const checkMillingInput = (input: MillingInput): Problem | undefined =>
  checkShop(input) ??
  checkList(input.boards, 'board', (board) => boardProblem(board)) ??
  checkList(input.parts, 'part', ({ folds = [], ...part }) => {
    const folded = sumOf(folds, ({ length }) => length);
    return (
      checkPart(part) ??
      firstBad([['folds', 'All sections of a panel that folds', folded, 'mm', { most: part.length + slack }]])
    );
  }) ??
  checkBlanks(input.blanks, 'blanks', input) ??
  firstWithin(input.blanks, 'blanks', (blank) => checkStrips(blank, input));

/** Beyond these a figure of the shop is a slip of the finger, in mm. */
function checkShop({ shop, limits }: MillingInput): Problem | undefined {
  const path = 'shop.';
  return firstBad([
    ...lengths(shop, ['jointerWidth', 'planerWidth'], { least: 50, most: 1500 }, { path }),
    ...lengths(shop, ['ripKerf', 'crosscutKerf', 'edgeAllowance', 'faceAllowance'], { least: 0, most: 25 }, { path }),
    ...lengths(shop, ['lengthAllowance'], { least: 0, most: 500 }, { path }),
    ...limitedMachines.flatMap((machine) =>
      Object.entries(limits[machine]).map(
        ([name, { mm }]): NumberCheck => [`limits.${machine}.${name}`, 'The limit', mm, 'mm', { above: 0, most: 3000 }],
      ),
    ),
  ]);
}

/** Whether the strips of a blank fit its board, and are large enough for their parts. */
function checkStrips({ board: id, length, strips }: CutBlank, { boards, parts, shop }: MillingInput) {
  const { width = 0 } = boards.find((board) => board.id === id) ?? {};
  const taken = rippedWidth(strips, shop.ripKerf);
  return firstBad([
    ['strips', 'The strips with their kerfs', taken, 'mm', { above: 0, most: width + slack }],
    ...strips.flatMap((strip, place): NumberCheck[] => {
      const part = parts.find((one) => one.id === strip.part);
      if (!part || strip.spoilt) return [];
      const least = (part.panel ? shop.edgeAllowance : part.width) - slack;
      return [
        [`strips.${place}.width`, 'The strip', strip.width, 'mm', { least }],
        ['length', 'The blank', length, 'mm', { least: part.length - slack }],
      ];
    }),
  ]);
}
