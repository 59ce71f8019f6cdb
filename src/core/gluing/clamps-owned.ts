import { badNumber } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, mm, newtons } from '../answer/quantity.ts';
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
 * @param panelWidth mm across the panel, cauls included: a clamp must open that far
 * @param owned kinds on the rack, free today; force in newtons, reach in mm
 * @returns clamps to take, force reached in newtons, what is missing, and what helps
 *
 * Valid: one row of clamps across one panel.
 * Errors: a count, force or reach that makes no sense, at `owned.N...`; a panel without width.
 * Example: 27.1 kN needed and ten clamps of 2000 N: 20 kN, so 7.1 kN missing; two stages do not lower that, stronger clamps do.
 * Source: common practice.
 */
export function compareClamps(
  needed: Pick<ClampCount, 'force' | 'leastForSpread'>,
  panelWidth: number,
  owned: readonly OwnedClamps[],
): Outcome<ClampsCompared> {
  const badWidth = badNumber('panelWidth', 'The width of the panel', panelWidth, 'mm', { above: 0, most: 12000 });
  if (badWidth) return badWidth;
  for (const [index, kind] of owned.entries()) {
    const bad =
      badNumber(`owned.${index}.count`, `How many of ${kind.name}`, kind.count, 'count', {
        least: 0,
        most: 500,
        whole: true,
      }) ??
      badNumber(`owned.${index}.force`, `The force of ${kind.name}`, kind.force, 'newtons', {
        above: 0,
        most: 50000,
      }) ??
      badNumber(`owned.${index}.reach`, `The reach of ${kind.name}`, kind.reach, 'mm', { above: 0, most: 12000 });
    if (bad) return bad;
  }

  const reaching = owned.filter((kind) => kind.reach >= panelWidth).sort((a, b) => b.force - a.force);
  const forSpread = needed.leastForSpread;
  const take: { name: string; count: number }[] = [];
  let force = 0;
  let taken = 0;
  for (const kind of reaching) {
    const forForce = Math.ceil((needed.force - force) / kind.force - 1e-9);
    const wanted = Math.min(kind.count, Math.max(forForce, forSpread - taken, 0));
    if (wanted === 0) continue;
    take.push({ name: kind.name, count: wanted });
    taken += wanted;
    force += wanted * kind.force;
  }
  const missing = Math.max(0, forSpread - taken);
  const missingForce = Math.max(0, needed.force - force);

  const helps: Phrase[] = [];
  const tooShort = owned.filter((kind) => kind.reach < panelWidth).reduce((sum, kind) => sum + kind.count, 0);
  if (missing > 0)
    helps.push(
      phrase('Wider cauls: each clamp then covers more of the seam. {missing} are missing as it is.', {
        missing: count(missing),
      }),
    );
  if (missingForce > 0) {
    helps.push(
      phrase('Stronger clamps, or borrow some: {force} are missing.', { force: newtons(missingForce) }),
      phrase('Joints so straight that they close by hand need less. Do a dry run: no light through any seam.'),
      phrase('A glue that wants light pressure, such as epoxy.'),
    );
  }
  if (missing + missingForce > 0) {
    if (tooShort > 0)
      helps.push(
        phrase('Two stages: {short} of your clamps are too short for {width}, but may reach across a sub-panel.', {
          short: count(tooShort),
          width: mm(panelWidth),
        }),
      );
    helps.push(phrase('Glue fewer panels at once, so that all clamps are free for this one.'));
  }
  return { take, force, missing, missingForce, helps };
}
