import { formatQuantity } from '../../core/answer/format-quantity.ts';
import { quantity, type Unit } from '../../core/answer/quantity.ts';
import type { Range } from '../../core/answer/range.ts';
import { units } from '../../ui/units.ts';

/** A range in the maker's units, the unit said once where both ends share it: `10 to 14 m²/L`, `30 min to 2 h`. */
export function usualRange({ least, most }: Range, unit: Unit): string {
  const from = formatQuantity(quantity(least, unit), units.value);
  const to = formatQuantity(quantity(most, unit), units.value);
  if (from === to) return to;
  const [number = '', name] = from.split(' ');
  return `${to.split(' ').slice(1).join(' ') === name ? number : from} to ${to}`;
}
