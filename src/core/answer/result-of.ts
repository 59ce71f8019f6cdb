import type { Quantity } from './quantity.ts';
import type { Worked } from './worked.ts';

/**
 * What a working comes to: the quantity that its last step gives.
 *
 * @param worked a value with its working
 * @returns the quantity
 * @example resultOf(oneStep('weight', phrase`as read`, grams(200), ['label'])) // => { value: 200, unit: 'grams' }
 */
export const resultOf = ({ working }: Worked<unknown>): Quantity => working.steps.at(-1)?.gives as Quantity;
