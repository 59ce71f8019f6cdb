import { isProblem } from '../../core/answer/problem.ts';
import { bevelWidth } from '../../core/square/bevel-width.ts';
import { type FoldedBox, foldedBox } from '../../core/square/folded-box.ts';
import { Choice } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import { LengthEntries } from './length-entries.tsx';
import { type BoxEntry, lengthsIn, type MitreForm } from './mitre-form.ts';
import { readTexts } from './read-texts.ts';

const labels: Readonly<Record<BoxEntry, string>> = {
  length: 'Length of the box',
  width: 'Width of the box',
  thickness: 'Thickness',
  loss: 'Lost at a cut',
};
const entries = Object.keys(labels) as BoxEntry[];
const order = ['Front', 'Right end', 'Back', 'Left end'];

interface Props {
  form: MitreForm;
  onType(entry: BoxEntry, text: string): void;
  onGiven(given: MitreForm['given']): void;
}

/** Four parts out of one board that fold round into a box, the grain running on round three corners. */
export function BoxParts({ form, onType, onGiven }: Props) {
  const { values, problems } = readTexts(entries, form.texts, lengthsIn(units.value.unit));
  const { length, width, thickness, loss = 0 } = values;
  const bevel = thickness === undefined ? undefined : bevelWidth(thickness);
  const box =
    problems.size > 0 || length === undefined || width === undefined || thickness === undefined
      ? undefined
      : foldedBox(length, width, thickness, form.given, loss);
  for (const outcome of [bevel, box]) if (isProblem(outcome)) problems.set(outcome.field, outcome);
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
      <Choice
        label="The sizes are"
        value={form.given}
        options={[
          { value: 'inside', label: 'Inside' },
          { value: 'outside', label: 'Outside' },
        ]}
        onInput={onGiven}
      />
      <LengthEntries labels={labels} texts={form.texts} problems={problems} onType={onType} />
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

function BoxAnswer({ of }: { of: FoldedBox }) {
  return (
    <>
      <p>
        <span class="figure">
          <Length mm={of.longPoints[0]} />
        </span>{' '}
        and{' '}
        <span class="figure">
          <Length mm={of.longPoints[1]} />
        </span>
        <br />
        at the long points, front and end
      </p>
      <p>Cut in this order, long point and short point:</p>
      <ol class="parts-in-order">
        {order.map((part, n) => (
          <li>
            {part} <Length mm={of.longPoints[n] ?? 0} />, inside <Length mm={of.shortPoints[n] ?? 0} />
          </li>
        ))}
      </ol>
      <p>
        Takes <Length mm={of.board} /> of board.
      </p>
    </>
  );
}
