import { useDraft } from '../../app/draft.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { bevelWidth } from '../../core/square/bevel-width.ts';
import { type BoxSizes, foldedBox } from '../../core/square/folded-box.ts';
import { Answer } from '../../ui/answer.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { planShop } from '../breakdown/problem-from-records.ts';
import { useEntries } from '../movement/entries.tsx';

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
          <Answer
            label="Long point of front and back"
            of={mm(box.value.longPoints[0])}
            facts={[
              ['Long point of the ends', mm(box.value.longPoints[1])],
              ['Short point of front and back', mm(box.value.shortPoints[0])],
              ['Short point of the ends', mm(box.value.shortPoints[1])],
              ['Board that it takes', mm(box.value.board)],
            ]}
            working={box.working}
          >
            <p>Cut in this order: front, right end, back, left end.</p>
          </Answer>
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
