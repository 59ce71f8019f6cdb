import { isProblem, type Outcome, problem, within } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { boardProblem } from './flat-thickness.ts';
import type { MillingInput } from './milling-input.ts';

/** Widest machine that a small shop could own; anything above is a slip of the finger. In mm. */
const widestMachine = 1500;

/** Why the sequence can't be made from this input, if it can't. */
export function checkMillingInput(input: MillingInput): Outcome<null> {
  for (const check of [checkShop, checkBoards, checkParts, checkBlanks]) {
    const wrong = check(input);
    if (isProblem(wrong)) return wrong;
  }
  return null;
}

function checkShop({ shop, limits }: MillingInput): Outcome<null> {
  for (const field of ['jointerWidth', 'planerWidth'] as const) {
    const width = shop[field];
    if (width !== null && !(width >= 50 && width <= widestMachine)) {
      return problem(
        `shop.${field}`,
        'A machine is between {least} and {most} wide: leave it empty when there is none.',
        {
          least: mm(50),
          most: mm(widestMachine),
        },
      );
    }
  }
  for (const field of ['ripKerf', 'crosscutKerf', 'edgeAllowance', 'faceAllowance', 'lengthAllowance'] as const) {
    const most = field === 'lengthAllowance' ? 500 : 25;
    if (!(shop[field] >= 0 && shop[field] <= most)) {
      return problem(`shop.${field}`, 'This is between zero and {most}.', { most: mm(most) });
    }
  }
  for (const machine of ['jointer', 'planer', 'tableSaw', 'guidedSaw', 'router'] as const) {
    for (const [dimension, limit] of Object.entries(limits[machine])) {
      if (!(limit.mm > 0 && limit.mm <= 3000)) {
        return problem(`limits.${machine}.${dimension}`, "A limit is above zero: look it up in the machine's manual.");
      }
    }
  }
  return null;
}

function checkBoards({ boards }: MillingInput): Outcome<null> {
  const seen = new Set<string>();
  for (const [index, board] of boards.entries()) {
    const wrong = boardProblem(board);
    if (isProblem(wrong)) return within(wrong, `boards.${index}`);
    if (seen.has(board.id)) return problem(`boards.${index}.id`, 'Two boards carry the same mark.');
    seen.add(board.id);
  }
  return null;
}

function checkParts({ parts }: MillingInput): Outcome<null> {
  for (const [index, part] of parts.entries()) {
    for (const field of ['length', 'width', 'thickness', 'quantity'] as const) {
      if (!(part[field] > 0 && part[field] <= 20000)) {
        return problem(`parts.${index}.${field}`, `The ${field} must be above zero.`);
      }
    }
    const folded = (part.folds ?? []).reduce((sum, section) => sum + section.length, 0);
    if (folded > part.length + 0.01) {
      return problem(`parts.${index}.folds`, 'The sections add up to {folded}, the panel is {length} long.', {
        folded: mm(folded),
        length: mm(part.length),
      });
    }
  }
  return null;
}

function checkBlanks({ blanks, boards, parts, shop }: MillingInput): Outcome<null> {
  const boardOf = new Map(boards.map((board) => [board.id, board]));
  const partOf = new Map(parts.map((part) => [part.id, part]));
  for (const [index, blank] of blanks.entries()) {
    const at = `blanks.${index}`;
    const board = boardOf.get(blank.board);
    if (!board) return problem(`${at}.board`, 'This board is not in the stack.');
    if (!(blank.start >= 0 && blank.length > 0 && blank.start + blank.length <= board.length + 0.01)) {
      return problem(`${at}.length`, 'The blank does not lie within its board of {length}.', {
        length: mm(board.length),
      });
    }
    if (blank.strips.length === 0) return problem(`${at}.strips`, 'The blank has no strips: nothing is made of it.');
    let taken = -shop.ripKerf;
    for (const [place, strip] of blank.strips.entries()) {
      taken += strip.width + shop.ripKerf;
      if (strip.spoilt) continue;
      const part = partOf.get(strip.part);
      if (!part) return problem(`${at}.strips.${place}.part`, 'There is no such part.');
      const least = part.panel ? shop.edgeAllowance : part.width;
      if (!(strip.width > 0 && strip.width >= least - 0.01)) {
        return problem(`${at}.strips.${place}.width`, 'The strip is too narrow: it needs at least {least}.', {
          least: mm(least),
        });
      }
      if (part.length > blank.length + 0.01) {
        return problem(`${at}.length`, 'The blank is shorter than its part of {length}.', { length: mm(part.length) });
      }
    }
    if (taken > board.width + 0.01) {
      return problem(`${at}.strips`, 'The strips and their kerfs take {taken}, the board is {width} wide.', {
        taken: mm(taken),
        width: mm(board.width),
      });
    }
  }
  return overlapProblem(blanks);
}

function overlapProblem(blanks: MillingInput['blanks']): Outcome<null> {
  for (const [index, blank] of blanks.entries()) {
    const clash = blanks.some(
      (other, place) =>
        place < index &&
        other.board === blank.board &&
        other.start < blank.start + blank.length - 0.01 &&
        blank.start < other.start + other.length - 0.01,
    );
    if (clash) return problem(`blanks.${index}.start`, 'Two blanks overlap on this board.');
  }
  return null;
}
