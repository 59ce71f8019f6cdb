import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { oppositeParts } from '../../core/square/opposite-parts.ts';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { useEntries } from '../movement/entries.tsx';

/** Opposite parts must be equal before angles matter. */
export function OppositeParts() {
  const entries = useEntries('opposite-1', {
    front: ['Front'],
    back: ['Back'],
    right: ['Right end'],
    left: ['Left end'],
  });
  const result = entries?.ask((lengths) => oppositeParts(lengths, shop.value.tapePrecision));
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
      {entries?.fields(result)}
    </section>
  );
}
