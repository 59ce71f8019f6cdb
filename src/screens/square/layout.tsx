import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { layoutDiagonal } from '../../core/square/layout-diagonal.ts';
import { wholeNumberTriangles } from '../../core/square/whole-number-triangles.ts';
import { Answer } from '../../ui/answer.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Length } from '../../ui/length.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';

/** For marking out from nothing: the diagonal to aim for, and triangles of whole numbers that fit. */
export function LayoutAnswer({ length, width }: { length: number; width: number }) {
  const diagonal = layoutDiagonal(length, width);
  if (isProblem(diagonal)) return <Trouble of={diagonal} />;
  return <Answer label="Both diagonals, when square" of={mm(diagonal.value)} working={diagonal.working} />;
}

/** Marks in whole inches or centimetres along two edges, and how far apart they are when the corner is square. */
export function Triangles({ length, width }: { length: number; width: number }) {
  const step = units.value.unit === 'in' ? 25.4 : 10;
  const found = wholeNumberTriangles(length, width, step);
  if (isProblem(found) || found.length === 0) return null;
  return (
    <section class="card" aria-label="Triangles">
      <h2>Or check one corner</h2>
      <p class="small">Mark both edges from the corner: square when the marks are that far apart.</p>
      <Facts
        rows={found.slice(0, 4).map(({ along, across, diagonal }) => [
          <>
            <Length mm={along} /> and <Length mm={across} />
          </>,
          mm(diagonal),
        ])}
      />
      <p class="small soft">A larger triangle shows a smaller error. Euclid, Elements X.29.</p>
    </section>
  );
}
