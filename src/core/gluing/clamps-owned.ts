import { firstBad } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, mm, newtons } from '../answer/quantity.ts';
import { sumOf } from '../answer/sum-of.ts';
import type { ClampCount } from './clamp-count.ts';

/** Clamps of one kind on the rack. */
export interface OwnedClamps {
  readonly name: string;
  readonly count: number;
  /** Newtons each. */
  readonly force: number;
  /** mm they open. */
  readonly reach: number;
}

export interface ClampsCompared {
  /** What to take from the rack, strongest first. */
  readonly take: readonly { readonly name: string; readonly count: number }[];
  readonly force: number;
  /** Clamps still missing for the spacing, of those that reach. */
  readonly missing: number;
  /** Newtons still missing. */
  readonly missingForce: number;
  readonly helps: readonly Phrase[];
}

/**
 * Which of the maker's clamps go on, and what is short.
 *
 * @param needed force in newtons, and how many clamps the spread of pressure asks for at least
 * @param across mm across the panel, cauls included: a clamp must open that far
 * @param owned kinds on the rack, free today; force in newtons, reach in mm
 * @returns clamps to take, force reached in newtons, what is missing, and what helps
 * @valid one row of clamps across one panel
 * @errors a count, force or reach that makes no sense, at `owned.N...`; a panel without width
 * @example compareClamps({ force: 27_100, leastForSpread: 6 }, 300, [{ name: 'bar', count: 10, force: 2000, reach: 600 }])
 *   // => { force: 20000, missingForce: 7100 }
 * @source common practice
 */
export function compareClamps(
  needed: Pick<ClampCount, 'force' | 'leastForSpread'>,
  across: number,
  owned: readonly OwnedClamps[],
): Outcome<ClampsCompared> {
  const size = { above: 0, most: 12000 };
  const bad =
    firstBad([['across', 'The width of the panel', across, 'mm', size]]) ??
    firstBad(
      owned.flatMap(({ name, count, force, reach }, at) => [
        [`owned.${at}.count`, `The number of ${name}`, count, 'count', { least: 0, most: 500, whole: true }],
        [`owned.${at}.force`, `The force of ${name}`, force, 'newtons', { above: 0, most: 50000 }],
        [`owned.${at}.reach`, `The reach of ${name}`, reach, 'mm', size],
      ]),
    );
  if (bad) return bad;

  const reaching = owned.filter(({ reach }) => reach >= across).sort((a, b) => b.force - a.force);
  const forSpread = needed.leastForSpread;
  const take: { name: string; count: number }[] = [];
  let force = 0;
  let taken = 0;
  for (const { name, count, force: each } of reaching) {
    const forForce = Math.ceil((needed.force - force) / each - 1e-9);
    const wanted = Math.min(count, Math.max(forForce, forSpread - taken));
    if (wanted <= 0) continue;
    take.push({ name, count: wanted });
    taken += wanted;
    force += wanted * each;
  }
  const missing = Math.max(0, forSpread - taken);
  const missingForce = Math.max(0, needed.force - force);

  const tooShort = sumOf(owned, ({ reach, count }) => (reach < across ? count : 0));
  const helps: Phrase[] = [];
  if (missing > 0) helps.push(phrase`Wider cauls: ${count(missing)} clamps are missing.`);
  if (missingForce > 0)
    helps.push(
      phrase`Stronger clamps, or more: ${newtons(missingForce)} are missing.`,
      phrase`Straighter joints: those that close by hand need less.`,
      phrase`A glue that wants light pressure, such as epoxy.`,
    );
  if (missing + missingForce > 0) {
    if (tooShort > 0)
      helps.push(
        phrase`Two stages: ${count(tooShort)} clamps too short for ${mm(across)} may reach across a sub-panel.`,
      );
    helps.push(phrase`Fewer panels at once.`);
  }
  return { take, force, missing, missingForce, helps };
}
