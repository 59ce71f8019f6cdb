import { formatSignificant } from '../core/answer/format-number.ts';
import { formatQuantity } from '../core/answer/format-quantity.ts';
import { quantity, type Unit } from '../core/answer/quantity.ts';
import type { Range } from '../core/answer/range.ts';
import { roughDuration } from '../core/answer/rough-duration.ts';
import { units } from './units.ts';

/**
 * A range in the maker's units, the unit said once: `10 to 14 m²/L`, and `0.91 to 1.27 qt` although less than a quart
 * would stand in fluid ounces. Times keep their own, `30 min to 2 h`, to two figures: what rests on the air or on a label
 * is known no better.
 */
export function sayRange({ least, most }: Range, unit: Unit): string {
  const say = (value: number) =>
    formatQuantity(quantity(unit === 'seconds' ? roughDuration(value) : value, unit), units.value);
  const [from, to] = [say(least), say(most)];
  if (from === to) return to;
  const [number = '', name, ...more] = from.split(' ');
  const [toNumber, ...toName] = to.split(' ');
  if (toName.join(' ') === name && more.length === 0) return `${number} to ${to}`;
  return `${unit === 'seconds' ? from : formatSignificant((Number(toNumber) * least) / most)} to ${to}`;
}
