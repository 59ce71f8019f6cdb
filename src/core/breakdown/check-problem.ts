import { badNumber } from '../answer/bad-number.ts';
import { isProblem, type Outcome, type Problem, problem, within } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { checkBoard } from './check-board.ts';
import { checkCut } from './check-cut.ts';
import { checkWishes } from './check-wishes.ts';
import type { BreakdownProblem, Part, Shop } from './problem-types.ts';
import { badAllowance, badSize } from './sizes.ts';
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
    (asked.boards.length === 0 ? problem('boards', 'There are no boards. Add some.') : undefined) ??
    (asked.parts.length === 0 ? problem('parts', 'There are no parts. Add some.') : undefined) ??
    firstOf(asked.boards, 'boards', checkBoard) ??
    repeated(asked.boards, 'boards', 'board') ??
    firstOf(asked.parts, 'parts', (part) => checkPart(asked, part)) ??
    repeated(asked.parts, 'parts', 'part') ??
    tooMany(asked) ??
    checkCut(asked) ??
    checkWishes(asked) ??
    asked
  );
}

function checkShop(shop: Shop): Problem | undefined {
  const widths = ['jointerWidth', 'planerWidth', 'minStrip', 'maxStrip'] as const;
  for (const name of widths) {
    const wrong = badSize(`shop.${name}`, name, shop[name]);
    if (wrong) return wrong;
  }
  const allowances = ['ripKerf', 'crosscutKerf', 'edgeAllowance', 'lengthAllowance', 'faceAllowance'] as const;
  for (const name of allowances) {
    const wrong = badAllowance(`shop.${name}`, name, shop[name]);
    if (wrong) return wrong;
  }
  const narrow = badNumber('shop.minStrip', 'The narrowest strip', shop.minStrip, 'mm', { least: leastStrip });
  if (narrow) return narrow;
  if (shop.minStrip > shop.maxStrip)
    return problem('shop.minStrip', 'The narrowest strip ({least}) is wider than the widest ({most}).', {
      least: mm(shop.minStrip),
      most: mm(shop.maxStrip),
    });
  if (shop.minStrip > flatteningLimit(shop))
    return problem('shop.minStrip', 'The narrowest strip ({least}) is wider than can be flattened ({most}).', {
      least: mm(shop.minStrip),
      most: mm(flatteningLimit(shop)),
    });
  if (shop.minStrip <= shop.edgeAllowance)
    return problem('shop.minStrip', 'A strip of {least} has nothing left once jointed ({edges}).', {
      least: mm(shop.minStrip),
      edges: mm(shop.edgeAllowance),
    });
  return undefined;
}

function checkPart(asked: BreakdownProblem, part: Part): Problem | undefined {
  for (const name of ['length', 'width', 'thickness'] as const) {
    const wrong = badSize(name, `The ${name} of ${part.id}`, part[name]);
    if (wrong) return wrong;
  }
  const uncounted = badNumber('quantity', `The quantity of ${part.id}`, part.quantity, 'count', {
    least: 1,
    whole: true,
  });
  if (uncounted) return uncounted;
  const { shop } = asked;
  const strip = part.width + shop.edgeAllowance;
  const limit = flatteningLimit(shop);
  if (!part.panel && strip > limit)
    return problem(
      'width',
      `${part.id} is {strip} wide with its edges; the shop flattens {limit} at most. Make it a panel, or narrower.`,
      { strip: mm(strip), limit: mm(limit) },
    );
  const boards = asked.boards.filter((board) => board.species === part.species);
  if (boards.length === 0) return problem('species', `There is no board of ${part.species} for ${part.id}.`);
  const blank = part.length + shop.lengthAllowance;
  const longest = Math.max(...boards.map((board) => board.length));
  if (blank > longest)
    return problem(
      'length',
      `${part.id} needs a blank {blank} long; the longest board of ${part.species} is {longest}.`,
      {
        blank: mm(blank),
        longest: mm(longest),
      },
    );
  return undefined;
}

function tooMany(asked: BreakdownProblem): Problem | undefined {
  const units = asked.parts.reduce((sum, part) => sum + part.quantity, 0);
  return units > mostUnits
    ? problem('parts', `${units} pieces; ${mostUnits} is the most for one plan. Plan them in groups.`)
    : undefined;
}

function firstOf<T>(items: readonly T[], prefix: string, check: (item: T) => Problem | undefined): Problem | undefined {
  for (const [index, item] of items.entries()) {
    const found = check(item);
    if (isProblem(found)) return within(found, `${prefix}.${index}`);
  }
  return undefined;
}

function repeated(items: readonly { readonly id: string }[], field: string, what: string): Problem | undefined {
  const seen = new Set<string>();
  for (const [index, { id }] of items.entries()) {
    if (seen.has(id)) return problem(`${field}.${index}.id`, `Two are called ${what} ${id}. Give each its own name.`);
    seen.add(id);
  }
  return undefined;
}
