import { badNumber, firstBad } from '../answer/bad-number.ts';
import { firstWithin } from '../answer/first-within.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { sumOf } from '../answer/sum-of.ts';
import { boardProblem } from '../milling/flat-thickness.ts';
import { checkBlanks } from './check-blanks.ts';
import { checkClear } from './check-clear.ts';
import { checkWishes } from './check-wishes.ts';
import type { BreakdownProblem, Part, Shop } from './problem-types.ts';
import { allowance, lengths, size } from './sizes.ts';
import { flatteningLimit } from './strip-limits.ts';

/** More pieces than any job of one maker; keeps the answer quick. */
const mostUnits = 2000;
/** Narrower than any strip that can be jointed, mm; keeps the number of strips within reason. */
const leastStrip = 1;

/**
 * Whether a breakdown can be asked at all: shapes that make sense, names that are known, and limits that can be kept.
 *
 * Parts that only happen to exceed what is in the rack are not wrong: the plan names them short.
 * Zero kerf and zero allowances are allowed.
 *
 * @param asked shop, boards and parts, mm
 * @returns the problem as it came, or the first thing wrong with it, naming the field, the part or board, and the limit
 * @valid any shapes
 * @errors sizes that make no sense, names that are not there, limits that can't be kept
 * @example checkProblem({ ...smallProblem, shop: { ...smallProblem.shop, minStrip: 160 } })
 *   // => { field: 'shop.minStrip' }
 * @source the statement of the problem
 */
export function checkProblem(asked: BreakdownProblem): Outcome<BreakdownProblem> {
  return (
    checkShop(asked.shop) ??
    checkList(asked.boards, 'board', (board) => boardProblem(board, ` of board ${board.id}`) ?? checkClear(board)) ??
    checkList(asked.parts, 'part', (part) => checkPart(part) ?? checkPossible(asked, part)) ??
    tooMany(asked) ??
    checkBlanks(asked.cut ?? [], 'cut', asked) ??
    checkWishes(asked) ??
    asked
  );
}

function checkShop(shop: Shop): Problem | undefined {
  const { minStrip, maxStrip, edgeAllowance } = shop;
  const path = 'shop.';
  const wrong = firstBad([
    ...lengths(shop, ['jointerWidth', 'planerWidth', 'minStrip', 'maxStrip'], size, { path }),
    ...lengths(shop, ['ripKerf', 'crosscutKerf', 'edgeAllowance', 'lengthAllowance', 'faceAllowance'], allowance, {
      path,
    }),
    ['shop.minStrip', 'The narrowest strip', minStrip, 'mm', { least: leastStrip }],
  ]);
  if (wrong) return wrong;
  const most = flatteningLimit(shop);
  const wide = phrase`The narrowest strip (${mm(minStrip)}) is wider than`;
  const slip =
    minStrip > maxStrip
      ? phrase`${wide} the widest (${mm(maxStrip)}).`
      : minStrip > most
        ? phrase`${wide} can be flattened (${mm(most)}).`
        : minStrip <= edgeAllowance
          ? phrase`A strip of ${mm(minStrip)} has nothing left once jointed (${mm(edgeAllowance)}).`
          : undefined;
  return slip && problem('shop.minStrip', slip);
}

/**
 * What is wrong with the sizes of a part.
 *
 * @param part sizes in mm, and how many
 * @returns the problem, or undefined when the part can be
 * @valid any shapes
 * @example checkPart({ ...smallProblem.parts[0], width: 0 }) // => { field: 'width' }
 * @source the statement of the problem
 */
export const checkPart = (part: Omit<Part, 'species'>): Problem | undefined =>
  firstBad(lengths(part, ['length', 'width', 'thickness'], size, { of: ` of ${part.id}` })) ??
  badNumber('quantity', `The quantity of ${part.id}`, part.quantity, 'count', { least: 1, whole: true });

/** Why no board, or no machine, could ever give a part. */
function checkPossible({ shop, boards }: BreakdownProblem, { id, species, ...part }: Part): Problem | undefined {
  const strip = part.width + shop.edgeAllowance;
  const limit = flatteningLimit(shop);
  if (!part.panel && strip > limit)
    return problem(
      'width',
      phrase`${id} is ${mm(strip)} wide with its edges; the shop flattens ${mm(limit)} at most. Make it a panel, or narrower.`,
    );
  const lengthsThere = boards.filter((board) => board.species === species).map(({ length }) => length);
  if (lengthsThere.length === 0) return problem('species', `There is no board of ${species} for ${id}.`);
  const blank = part.length + shop.lengthAllowance;
  const longest = Math.max(...lengthsThere);
  return blank > longest
    ? problem(
        'length',
        phrase`${id} needs a blank ${mm(blank)} long; the longest board of ${species} is ${mm(longest)}.`,
      )
    : undefined;
}

function tooMany({ parts }: BreakdownProblem): Problem | undefined {
  const units = sumOf(parts, (part) => part.quantity);
  return units > mostUnits
    ? problem('parts', `${units} pieces; ${mostUnits} is the most for one plan. Plan them in groups.`)
    : undefined;
}

/**
 * What is wrong with a list of boards or parts: there are none, one is wrong by itself, or two have one name.
 *
 * @param items with their ids
 * @param what they are
 * @param check what is wrong with one by itself
 * @returns the problem, or undefined when there is none
 * @valid any list
 * @example checkList([{ id: 'A' }, { id: 'A' }], 'part', () => undefined) // => { field: 'parts.1.id' }
 * @source the statement of the problem
 */
export function checkList<T extends { readonly id: string }>(
  items: readonly T[],
  what: 'board' | 'part',
  check: (item: T) => Problem | undefined,
): Problem | undefined {
  const path = `${what}s`;
  if (items.length === 0) return problem(path, `There are no ${path}. Add some.`);
  return firstWithin(
    items,
    path,
    (item, index) =>
      check(item) ??
      (items.findIndex(({ id }) => id === item.id) < index
        ? problem('id', `Two are called ${what} ${item.id}. Give each its own name.`)
        : undefined),
  );
}
