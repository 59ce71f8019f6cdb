import { isProblem } from '../../core/answer/problem.ts';
import { correctionClamps } from '../../core/square/correction-clamps.ts';
import { correctionCut } from '../../core/square/correction-cut.ts';
import { layoutDiagonal } from '../../core/square/layout-diagonal.ts';
import { lengthsOf } from '../../core/square/quadrilateral.ts';
import type { Squareness } from '../../core/square/squareness.ts';
import { wholeNumberTriangles } from '../../core/square/whole-number-triangles.ts';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import type { Situation } from './square-form.ts';

/** How much of a clamp's pull a glued case gives back; the maker sees the figure in the working. */
const springBack = 0.2;

/** What to do about it, by what stands before the maker. */
export function Correction({ of, situation }: { of: Squareness; situation: Situation }) {
  if (situation === 'layout') return <Layout of={of} />;
  if (of.shape === 'undetermined' || !of.closing.consistent) return null;
  if (situation === 'clamps') {
    const clamps = correctionClamps(of.fitted, of.shape, springBack);
    if (isProblem(clamps)) return <p>{<Say phrase={clamps.message} />}</p>;
    return (
      <section class="card" aria-label="In the clamps">
        <p>
          <Say phrase={clamps.value.say} />
        </p>
        <ShowWorking of={clamps.working} />
      </section>
    );
  }
  if (of.shape === 'square') return null;
  return (
    <>
      {(['right', 'left'] as const).map((end) => {
        const cut = correctionCut(of.fitted, end, situation);
        return (
          <section class="card" aria-label={`The ${end}-hand cut`}>
            <p>
              <Say phrase={cut.value.say} />
            </p>
            {cut.value.sayShared && (
              <p class="soft">
                <Say phrase={cut.value.sayShared} />
              </p>
            )}
            <ShowWorking of={cut.working} label={`How the ${end}-hand cut is worked out`} />
          </section>
        );
      })}
    </>
  );
}

/** For marking out: the diagonal to aim for, and triangles of whole numbers that fit. */
function Layout({ of }: { of: Squareness }) {
  const { front, left } = lengthsOf(of.fitted);
  const diagonal = layoutDiagonal(front, left);
  const unit = units.value.unit === 'in' ? 25.4 : 10;
  const triangles = wholeNumberTriangles(front, left, unit);
  if (isProblem(diagonal)) return <p>{<Say phrase={diagonal.message} />}</p>;
  return (
    <section class="card" aria-label="Layout">
      <p>
        Aim for diagonals of{' '}
        <b>
          <Length mm={diagonal.value} />
        </b>
        , both alike.
      </p>
      <ShowWorking of={diagonal.working} />
      {!isProblem(triangles) && triangles.length > 0 && (
        <p>
          Or a triangle in whole numbers from corner A:{' '}
          {triangles.slice(0, 3).map((triangle, n) => (
            <span>
              {n > 0 && '; '}
              <Length mm={triangle.along} /> along, <Length mm={triangle.across} /> across,{' '}
              <Length mm={triangle.diagonal} /> between
            </span>
          ))}
          .
        </p>
      )}
    </section>
  );
}
