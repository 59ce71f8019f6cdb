import { phrase } from '../answer/phrase.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import { reachableThickness } from '../milling/reachable-thickness.ts';
import { clearStretches } from './clear-stretches.ts';
import type { Blank, BreakdownPlan, BreakdownProblem, Part, RoughBoard, Shop } from './problem-types.ts';
import { slack } from './sizes.ts';
import { flatteningLimit } from './strip-limits.ts';

/**
 * Every rule that a plan breaks, one problem each; an empty list says that the plan can be cut.
 *
 * What is cut already is taken as it is and not held against the rules, strips added beside it are. Wishes are not
 * checked here.
 *
 * @param asked boards, parts and shop, mm
 * @param plan blanks and what is short, mm
 * @returns problems whose field is a path in the plan: `blanks.3`, `short`
 * @valid problems that `checkProblem` let pass
 * @example planBreaches(oneRail, planOf(blank('B1', 0, 400, [100, 'rail']), blank('B1', 390, 400)))
 *   // => [{ field: 'blanks.1' }]
 * @source the statement of the problem; geometry
 */
export function planBreaches(asked: BreakdownProblem, plan: BreakdownPlan): Problem[] {
  const cut = new Map((asked.cut ?? []).map((blank) => [`${blank.board}@${blank.start}`, blank.strips.length]));
  return [
    ...plan.blanks.flatMap((blank, index) =>
      blankBreaches(asked, blank, `blanks.${index}`, cut.get(`${blank.board}@${blank.start}`)),
    ),
    ...overlaps(asked, plan),
    ...coverBreaches(asked, plan),
  ];
}

/** @param cutStrips how many of the first strips are cut already, where the blank is; undefined where it isn't */
function blankBreaches(asked: BreakdownProblem, blank: Blank, field: string, cutStrips?: number): Problem[] {
  const board = asked.boards.find((candidate) => candidate.id === blank.board);
  if (!board) return [problem(field, `There is no board ${blank.board}.`)];
  const stretch = clearStretches(board).find(
    (clear) => blank.start >= clear.start - slack && blank.start + blank.length <= clear.start + clear.length + slack,
  );
  if (!stretch || !(blank.length > 0)) return [problem(field, `The blank lies outside what is clear of ${board.id}.`)];
  const breaches: Problem[] = [];
  const needed =
    blank.strips.reduce((sum, strip) => sum + strip.width, 0) +
    asked.shop.ripKerf * Math.max(0, blank.strips.length - 1);
  const added = blank.strips.slice(cutStrips ?? 0);
  if (added.length > 0 && !(needed <= stretch.width + slack))
    breaches.push(problem(field, phrase`The strips need ${mm(needed)} of ${mm(stretch.width)}.`));
  for (const strip of added) {
    const part = asked.parts.find((candidate) => candidate.id === strip.part);
    if (!part) breaches.push(problem(field, `There is no part ${strip.part}.`));
    else if (!(Number.isInteger(strip.unit) && strip.unit >= 1 && strip.unit <= part.quantity))
      breaches.push(problem(field, `${part.id} has no unit ${strip.unit}.`));
    else breaches.push(...stripBreaches(asked.shop, board, blank, part, strip.width, field));
  }
  return breaches;
}

function stripBreaches(
  shop: Shop,
  board: RoughBoard,
  blank: Blank,
  part: Part,
  width: number,
  field: string,
): Problem[] {
  const breaches: Problem[] = [];
  const limit = flatteningLimit(shop);
  const most = part.panel ? Math.min(shop.maxStrip, limit) : limit;
  const least = part.panel ? shop.minStrip : part.width + shop.edgeAllowance;
  if (part.species !== board.species) breaches.push(problem(field, `${part.id} is not of ${board.species}.`));
  if (blank.length < part.length + shop.lengthAllowance - slack)
    breaches.push(problem(field, `The blank is too short for ${part.id}.`));
  if (!(width <= most + slack && width >= least - slack))
    breaches.push(
      problem(field, phrase`A strip of ${mm(width)} for ${part.id} is outside ${mm(least)} to ${mm(most)}.`),
    );
  const reached = reachableThickness(board, width, blank.length, shop.faceAllowance);
  if (reached < part.thickness - slack)
    breaches.push(problem(field, phrase`${part.id} comes out ${mm(reached)} thick and needs ${mm(part.thickness)}.`));
  return breaches;
}

function overlaps(asked: BreakdownProblem, plan: BreakdownPlan): Problem[] {
  const ordered = plan.blanks
    .map((blank, index) => ({ blank, index }))
    .sort((a, b) =>
      a.blank.board === b.blank.board ? a.blank.start - b.blank.start : a.blank.board < b.blank.board ? -1 : 1,
    );
  return ordered.flatMap(({ blank, index }, at) => {
    const before = ordered[at - 1]?.blank;
    if (before?.board !== blank.board) return [];
    const free = before.start + before.length + asked.shop.crosscutKerf;
    return blank.start >= free - slack ? [] : [problem(`blanks.${index}`, `Blanks overlap on ${blank.board}.`)];
  });
}

/** The width that each unit still lacks under a plan, and how many strips it has. */
export function unitCover(asked: BreakdownProblem, plan: BreakdownPlan) {
  const spoilt = new Map(
    (asked.cut ?? []).map((blank) => [`${blank.board}@${blank.start}`, blank.strips.map((strip) => strip.spoilt)]),
  );
  const got = new Map<string, { width: number; strips: number }>();
  for (const blank of plan.blanks) {
    const bad = spoilt.get(`${blank.board}@${blank.start}`);
    blank.strips.forEach((strip, at) => {
      if (bad?.[at]) return;
      const key = `${strip.part}#${strip.unit}`;
      const before = got.get(key) ?? { width: 0, strips: 0 };
      got.set(key, { width: before.width + strip.width - asked.shop.edgeAllowance, strips: before.strips + 1 });
    });
  }
  return asked.parts.flatMap((part) =>
    Array.from({ length: part.quantity }, (_, index) => {
      const { width, strips } = got.get(`${part.id}#${index + 1}`) ?? { width: 0, strips: 0 };
      const missingWidth = part.panel ? Math.max(0, part.width - width) : strips > 0 ? 0 : part.width;
      return { part, unit: index + 1, strips, missingWidth, covered: missingWidth <= slack };
    }),
  );
}

function coverBreaches(asked: BreakdownProblem, plan: BreakdownPlan): Problem[] {
  const short = new Set(plan.short.map(({ part, unit }) => `${part}#${unit}`));
  return unitCover(asked, plan).flatMap(({ part, unit, strips, covered }) => {
    const named = short.has(`${part.id}#${unit}`);
    if (!part.panel && strips > 1)
      return [problem('blanks', `${part.id} ${unit} is one piece but has ${strips} strips.`)];
    if (!covered && !named) return [problem('short', `${part.id} ${unit} is not covered and not named short.`)];
    return covered && named ? [problem('short', `${part.id} ${unit} is named short but covered.`)] : [];
  });
}
