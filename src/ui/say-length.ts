import { formatQuantity } from '../core/answer/format-quantity.ts';
import { mm } from '../core/answer/quantity.ts';
import { units } from './units.ts';

/** A length as text in the maker's units, for what a drawing shows to those who don't see it. */
export const sayLength = (length: number): string => formatQuantity(mm(length), units.value);
