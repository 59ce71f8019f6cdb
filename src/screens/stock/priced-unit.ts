import { m3PerBoardFoot } from '../../core/answer/us-units.ts';
import type { Delivery } from '../../store/records/delivery.ts';

type Priced = Pick<Delivery, 'price'>;

/** The unit in which a delivery is priced and its invoice is written. */
export const pricedUnit = ({ price }: Priced): 'boardFeet' | 'm3' => (price.per === 'cubicMetre' ? 'm3' : 'boardFeet');

/** One unit of the price in board feet, in which the record keeps volumes. */
export const inBoardFeet = (delivery: Priced): number => (pricedUnit(delivery) === 'm3' ? 1 / m3PerBoardFoot : 1);

/** What the invoice says, in the unit of the price, to a millionth: it comes back as it was typed. */
export const invoicedVolume = (delivery: Delivery): number | undefined =>
  delivery.invoiceBoardFeet && Math.round((delivery.invoiceBoardFeet / inBoardFeet(delivery)) * 1e6) / 1e6;

/** What is typed from the invoice, as the record keeps it. */
export const recordedVolume = (delivery: Priced, typed: number | undefined): number | undefined =>
  typed && typed * inBoardFeet(delivery);
