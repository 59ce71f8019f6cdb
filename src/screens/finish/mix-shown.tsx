import { grams, litres } from '../../core/answer/quantity.ts';
import type { Worked } from '../../core/answer/worked.ts';
import type { Mix } from '../../core/finishing/two-part-mix.ts';
import { type Fact, Facts } from '../../ui/facts.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';

/** How much of each part, in the measuring cup and on the scale. */
export function MixShown({ of: { value, working } }: { of: Worked<Mix> }) {
  const onScale = (mass: number | undefined): Fact[] => (mass === undefined ? [] : [['or on a scale', grams(mass)]]);
  return (
    <>
      <Facts
        rows={[
          ['Part A', litres(value.litresA)],
          ...onScale(value.gramsA),
          ['Part B', litres(value.litresB)],
          ...onScale(value.gramsB),
          ['Together', litres(value.litres)],
        ]}
      />
      <ShowWorking of={working} label="How the parts are worked out" />
    </>
  );
}
