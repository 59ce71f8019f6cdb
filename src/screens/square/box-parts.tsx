import { useDraft } from '../../app/draft.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { bevelWidth } from '../../core/square/bevel-width.ts';
import { type BoxSizes, type FoldedBox, foldedBox } from '../../core/square/folded-box.ts';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { planShop } from '../breakdown/problem-from-records.ts';
import { useEntries } from '../movement/entries.tsx';

const order = ['Front', 'Right end', 'Back', 'Left end'];
const sizes = optionsOf({ inside: 'Inside', outside: 'Outside' });

/** Four parts out of one board that fold round into a box, the grain running on round three corners. */
export function BoxParts() {
  const given = useDraft<BoxSizes>('box-given-1', 'inside');
  const entries = useEntries('box-2', {
    length: ['Length of the box'],
    width: ['Width of the box'],
    thickness: ['Thickness'],
    loss: ['Lost at a cut', planShop(shop.value).crosscutKerf],
  });
  const by = given.value;
  if (!entries || !by) return null;
  const box = entries.ask(({ length, width, thickness, loss }) => foldedBox(length, width, thickness, by, loss));
  const bevel = entries.ask(({ thickness }) => bevelWidth(thickness), ['thickness']);
  return (
    <>
      <div aria-live="polite" class="square-answer">
        {box && !isProblem(box) && (
          <div class="answer">
            <BoxAnswer of={box.value} />
            <ShowWorking of={box.working} />
          </div>
        )}
      </div>
      <Choice label="The sizes are" value={by} options={sizes} onInput={given.set} />
      {entries.fields(box ?? bevel)}
      {bevel && !isProblem(bevel) && (
        <section class="card" aria-label="Bevel">
          <p>
            At 45° the bevel is <Length mm={bevel.value.onFace} /> on the face, <Length mm={bevel.value.bevel} />{' '}
            across.
          </p>
          <ShowWorking of={bevel.working} />
        </section>
      )}
      <p class="small">
        Tilted blades pinch the offcut: keep it free, and never between fence and blade. The saw’s own manual comes
        first.
      </p>
    </>
  );
}

function BoxAnswer({ of: { longPoints, shortPoints, board } }: { of: FoldedBox }) {
  return (
    <>
      <p>
        <span class="figure">
          <Length mm={longPoints[0]} />
        </span>{' '}
        and{' '}
        <span class="figure">
          <Length mm={longPoints[1]} />
        </span>
        <br />
        at the long points, front and end
      </p>
      <p>Cut in this order, long point and short point:</p>
      <ol class="parts-in-order">
        {order.map((part, n) => (
          <li>
            {part} <Length mm={longPoints[n] ?? 0} />, inside <Length mm={shortPoints[n] ?? 0} />
          </li>
        ))}
      </ol>
      <p>
        Takes <Length mm={board} /> of board.
      </p>
    </>
  );
}
