import { cubicMetresPerBoardFoot } from '../../core/lumber/exact-volume.ts';
import type { Delivery } from '../../store/records/delivery.ts';

/** The unit in which a delivery is priced and its invoice is written. */
export const pricedUnit = ({ price }: Pick<Delivery, 'price'>): 'boardFeet' | 'm3' =>
  price.per === 'cubicMetre' ? 'm3' : 'boardFeet';

/** Board feet of the record in one unit of the price. */
const boardFeetPer = (delivery: Pick<Delivery, 'price'>) =>
  pricedUnit(delivery) === 'm3' ? 1 / cubicMetresPerBoardFoot : 1;

/** What the invoice says, in the unit of the price. */
export function invoicedVolume(delivery: Delivery): number | undefined {
  const { invoiceBoardFeet } = delivery;
  if (invoiceBoardFeet === undefined) return undefined;
  // To a millionth: a volume in cubic metres is kept in board feet, and comes back as it was typed.
  return Math.round((invoiceBoardFeet / boardFeetPer(delivery)) * 1e6) / 1e6;
}

/** What is typed from the invoice, as the record keeps it. */
export const recordedVolume = (delivery: Pick<Delivery, 'price'>, typed: number): number =>
  typed * boardFeetPer(delivery);
