import { grams, litres } from '../../core/answer/quantity.ts';
import type { Mix } from '../../core/finishing/two-part-mix.ts';
import { Amount } from '../../ui/amount.tsx';

/** How much of each part, in the measuring cup and on the scale. */
export function MixShown({ of }: { of: Mix }) {
  return (
    <dl class="facts">
      <dt>Part A</dt>
      <dd>
        <Amount of={litres(of.litresA)} />
        {of.gramsA !== undefined && (
          <>
            {' '}
            or <Amount of={grams(of.gramsA)} />
          </>
        )}
      </dd>
      <dt>Part B</dt>
      <dd>
        <Amount of={litres(of.litresB)} />
        {of.gramsB !== undefined && (
          <>
            {' '}
            or <Amount of={grams(of.gramsB)} />
          </>
        )}
      </dd>
      <dt>Together</dt>
      <dd>
        <Amount of={litres(of.litres)} />
      </dd>
    </dl>
  );
}
