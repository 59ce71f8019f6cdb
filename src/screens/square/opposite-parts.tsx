import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { oppositeParts } from '../../core/square/opposite-parts.ts';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import { LengthEntries } from './length-entries.tsx';
import { lengthsIn, type MitreForm, type PartEntry } from './mitre-form.ts';
import { readTexts } from './read-texts.ts';

const labels: Readonly<Record<PartEntry, string>> = {
  front: 'Front',
  back: 'Back',
  right: 'Right end',
  left: 'Left end',
};
const parts = Object.keys(labels) as PartEntry[];

/** Opposite parts must be equal before angles matter. */
export function OppositeParts({ form, onType }: { form: MitreForm; onType(entry: PartEntry, text: string): void }) {
  const { values, problems } = readTexts(parts, form.texts, lengthsIn(units.value.unit));
  const { front, back, right, left } = values;
  const all = front !== undefined && back !== undefined && right !== undefined && left !== undefined;
  const result = all ? oppositeParts({ front, back, right, left }, shop.value.tapePrecision) : undefined;
  if (isProblem(result)) problems.set(result.field, result);
  return (
    <section class="card" aria-label="Opposite parts">
      <h2>First: are opposite parts equal?</h2>
      <div aria-live="polite">
        {result && !isProblem(result) && (
          <>
            <p>
              <b>
                <Say phrase={result.value.say} />
              </b>
            </p>
            <ShowWorking of={result.working} />
          </>
        )}
      </div>
      <LengthEntries labels={labels} texts={form.texts} problems={problems} onType={onType} />
    </section>
  );
}
