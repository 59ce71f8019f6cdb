import { type Phrase, phrase } from '../answer/phrase.ts';
import { boardFeet, mm } from '../answer/quantity.ts';
import { sumOf } from '../answer/sum-of.ts';
import { m3PerBoardFoot } from '../answer/us-units.ts';
import { fewestRips } from './fewest-rips.ts';
import type { BreakdownPlan, BreakdownProblem, Part } from './problem-types.ts';
import { freeRuns, type Run } from './rack.ts';
import { widestStrip } from './strip-limits.ts';
import { supplyRule } from './supply-rule.ts';

/** What to buy for a part that is short. */
export interface Purchase {
  readonly species: string;
  /** Rough thickness and width of the boards to look for, as in the rack, mm. */
  readonly thickness: number;
  readonly width: number;
  /** Length of clear board in total, mm, and the shortest single length that is of use. */
  readonly length: number;
  readonly shortest: number;
  readonly boardFeet: number;
}

/** A part that is short, why, and what to buy. */
export interface Shortage {
  readonly part: string;
  readonly units: number;
  readonly missingWidth: number;
  readonly reason: Phrase;
  /** Absent where more of what is in the rack would not help. */
  readonly buy?: Purchase;
}

/**
 * Why parts are short, and what to buy for them.
 *
 * The purchase is worked out from a flat, straight board of the rack's median width and of the thickness that the part
 * needs, and is rounded up to whole blanks; real boards vary, so buy some more.
 *
 * @param asked boards, parts and shop, mm
 * @param plan with what is short
 * @returns for each part that is short: the reason, and the board feet to buy at the typical width and thickness in the
 *   rack
 * @valid problems that `checkProblem` let pass
 * @example shortages(shortLid, lastPlan(shortLid))
 *   // => [{ part: 'lid', missingWidth: 161, buy: { length: 1030, width: 210, boardFeet: 2.475 } }]
 * @source geometry; NIST SP 811 for the inch
 */
export function shortages(asked: BreakdownProblem, plan: BreakdownPlan): Shortage[] {
  const runs = freeRuns(asked);
  const maySupply = supplyRule(asked);
  return asked.parts.flatMap((part, partAt) => {
    const short = plan.short.filter((entry) => entry.part === part.id);
    if (short.length === 0) return [];
    const missingWidth = sumOf(short, (entry) => entry.missingWidth);
    const allowed = runs.filter(({ boardAt }) => maySupply(partAt, boardAt));
    const reason = whyShort(asked, allowed, part, missingWidth);
    const buy = purchase(asked, part, short.length, missingWidth);
    return [{ part: part.id, units: short.length, missingWidth, reason, ...(buy && { buy }) }];
  });
}

function whyShort(asked: BreakdownProblem, allowed: readonly Run[], part: Part, missing: number): Phrase {
  const { shop } = asked;
  const blank = part.length + shop.lengthAllowance;
  if (allowed.length === 0) return phrase`No board that ${part.id} may come from is left.`;
  const long = allowed.filter((run) => run.length >= blank);
  if (long.length === 0)
    return phrase`No free length for ${part.id} reaches ${mm(blank)}; the longest is ${mm(Math.max(...allowed.map((run) => run.length)))}.`;
  const least = part.panel ? shop.minStrip : part.width + shop.edgeAllowance;
  const wide = long.filter((run) => run.width >= least);
  if (wide.length === 0) return phrase`No board long enough for ${part.id} is ${mm(least)} wide.`;
  if (wide.every((run) => widestStrip(shop, run.board, part, blank) < least))
    return phrase`No board still gives ${part.id} its ${mm(part.thickness)} once it is flat.`;
  const others = asked.parts.length > 1 ? ' beside the other parts' : '';
  return part.panel
    ? phrase`The boards that suit ${part.id} leave ${mm(missing)} of width short${others}.`
    : phrase`The boards that suit ${part.id} hold no more blanks of ${mm(blank)}${others}.`;
}

function purchase(asked: BreakdownProblem, part: Part, units: number, missing: number): Purchase | undefined {
  const { shop } = asked;
  const rack = asked.boards.filter((board) => board.species === part.species);
  const least = part.panel ? shop.minStrip : part.width + shop.edgeAllowance;
  const thickEnough = rack.filter((board) => board.thickness - 2 * shop.faceAllowance >= part.thickness);
  const width = median(rack.map((board) => board.width).filter((boardWidth) => boardWidth >= least));
  const thickness = median(thickEnough.map((board) => board.thickness));
  if (width === undefined || thickness === undefined) return undefined;
  const blank = part.length + shop.lengthAllowance;
  const flat = { id: '', species: part.species, thickness, width, length: blank, cup: 0, bow: 0 };
  const gives = part.panel
    ? fewestRips(shop, width, widestStrip(shop, flat, part, blank)).gives
    : Math.floor((width + shop.ripKerf) / (least + shop.ripKerf));
  if (gives <= 0) return undefined;
  const blanks = Math.ceil((part.panel ? missing : units) / gives);
  const length = blanks * blank + (blanks - 1) * shop.crosscutKerf;
  const feet = (length * width * thickness * 1e-9) / m3PerBoardFoot;
  return { species: part.species, thickness, width, length, shortest: blank, boardFeet: feet };
}

/**
 * What to buy in words.
 *
 * @param buy as `shortages` gives it
 * @returns one sentence with quantities
 * @valid what `shortages` gives
 * @example purchasePhrase({ species: 'cherry', thickness: 27, width: 200, length: 1050, shortest: 1050, boardFeet: 2.4 })
 *   .quantities // => { 0: { value: 2.4, unit: 'boardFeet' } }
 * @source as of `shortages`
 */
export const purchasePhrase = ({ species, thickness, width, length, shortest, boardFeet: feet }: Purchase): Phrase =>
  phrase`Buy ${boardFeet(feet)} of ${species}, ${mm(thickness)} thick: ${mm(length)} of board about ${mm(width)} wide, in lengths of ${mm(shortest)} or more.`;

function median(values: readonly number[]): number | undefined {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}
