import { isProblem } from '../../core/answer/problem.ts';
import { lengthsOf } from '../../core/square/quadrilateral.ts';
import type { Squareness } from '../../core/square/squareness.ts';
import { tolerance } from '../../core/square/tolerance.ts';
import { squarenessTolerances } from '../../tables/squareness-tolerances.ts';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';

const words = {
  within: 'Near enough for this use.',
  outside: 'Too far out for this use.',
  unseen: 'These readings are too coarse to say whether it is near enough.',
};

/** Whether the worse end is near enough to square for what it is for. */
export function Tolerance({ of, use }: { of: Squareness; use: string }) {
  const row = squarenessTolerances.find(({ id }) => id === use) ?? squarenessTolerances[0];
  if (!row || of.shape === 'undetermined' || !of.closing.consistent) return null;
  const { right, left } = lengthsOf(of.fitted);
  const [slide, end] =
    Math.abs(of.slide.C ?? 0) >= Math.abs(of.slide.D ?? 0) ? [of.slide.C ?? 0, right] : [of.slide.D ?? 0, left];
  const result = tolerance(slide, end, row.perMetre, of.detectable ?? Number.POSITIVE_INFINITY);
  if (isProblem(result)) return null;
  return (
    <section class="card" aria-label="Tolerance">
      <p>
        <b>{words[result.value.verdict]}</b> Allowed: <Length mm={result.value.allowed} />.
      </p>
      <ShowWorking of={result.working} label="What is allowed" />
    </section>
  );
}
