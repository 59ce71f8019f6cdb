import { litres } from '../../core/answer/quantity.ts';
import { Amount } from '../../ui/amount.tsx';

/** How much one coat is likely to take; nothing for steps that are no coat. */
export function CoatTakes({ litres: amount }: { litres: number | undefined }) {
  if (amount === undefined) return null;
  return (
    <p>
      The whole coat takes about{' '}
      <b>
        <Amount of={litres(amount)} />
      </b>
      .
    </p>
  );
}
