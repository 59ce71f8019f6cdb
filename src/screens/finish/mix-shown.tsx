import { grams, litres } from '../../core/answer/quantity.ts';
import type { Mix } from '../../core/finishing/two-part-mix.ts';
import { type Fact, Facts } from '../../ui/facts.tsx';

/** How much of each part, in the measuring cup and on the scale. */
export function MixShown({ of: { litresA, litresB, gramsA, gramsB, litres: together } }: { of: Mix }) {
  const onScale = (mass: number | undefined): Fact[] => (mass === undefined ? [] : [['or on a scale', grams(mass)]]);
  return (
    <Facts
      rows={[
        ['Part A', litres(litresA)],
        ...onScale(gramsA),
        ['Part B', litres(litresB)],
        ...onScale(gramsB),
        ['Together', litres(together)],
      ]}
    />
  );
}
