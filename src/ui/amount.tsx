import { formatQuantity } from '../core/answer/format-quantity.ts';
import type { Quantity } from '../core/answer/quantity.ts';
import { Length } from './length.tsx';
import { units } from './units.ts';

/** Any quantity in the maker's units. */
export function Amount({ of }: { of: Quantity }) {
  if (of.unit === 'mm') return <Length mm={of.value} />;
  return <span class="nowrap">{formatQuantity(of, units.value)}</span>;
}
