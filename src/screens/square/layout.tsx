import { isProblem } from '../../core/answer/problem.ts';
import { layoutDiagonal } from '../../core/square/layout-diagonal.ts';
import { wholeNumberTriangles } from '../../core/square/whole-number-triangles.ts';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';

/** For marking out from nothing: the diagonal to aim for, and triangles of whole numbers that fit. */
export function LayoutAnswer({ length, width }: { length: number; width: number }) {
  const diagonal = layoutDiagonal(length, width);
  if (isProblem(diagonal))
    return (
      <p class="trouble">
        <Say phrase={diagonal.message} />
      </p>
    );
  return (
    <div class="answer now">
      <p>
        <span class="figure">
          <Length mm={diagonal.value} />
        </span>
        <br />
        Both diagonals, when square
      </p>
      <ShowWorking of={diagonal.working} />
    </div>
  );
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
      <table class="triangles">
        <thead>
          <tr>
            <th>Length</th>
            <th>Width</th>
            <th>Apart</th>
          </tr>
        </thead>
        <tbody>
          {found.slice(0, 4).map(({ along, across, diagonal }) => (
            <tr key={along / across}>
              {[along, across, diagonal].map((mm) => (
                <td>
                  <Length mm={mm} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small soft">A larger triangle shows a smaller error. Euclid, Elements X.29.</p>
    </section>
  );
}
