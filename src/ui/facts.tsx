import type { ComponentChildren } from 'preact';
import type { Quantity } from '../core/answer/quantity.ts';
import { Amount } from './amount.tsx';

export type Fact = readonly [name: ComponentChildren, of: Quantity | string];

/** Quantities, or words, with their names, one below the other. */
export function Facts({ rows }: { rows: readonly Fact[] }) {
  return (
    <dl class="facts">
      {rows.map(([name, of]) => [<dt>{name}</dt>, <dd>{typeof of === 'string' ? of : <Amount of={of} />}</dd>])}
    </dl>
  );
}
