import type { Quantity } from './quantity.ts';
import type { Worked } from './worked.ts';

/**
 * What a working comes to: the quantity that its last step gives.
 *
 * Example: of the board feet of a board, `{ value: 8, unit: 'boardFeet' }`.
 */
export const resultOf = ({ working }: Worked<unknown>): Quantity => working.steps.at(-1)?.gives as Quantity;
