import type { StoredRecord } from './record.ts';

/** What came from the yard on one day, and what it cost. */
export interface Delivery extends StoredRecord {
  readonly supplier: string;
  /** Day of the calendar, for example `2025-03-14`. */
  readonly date: string;
  readonly price: { readonly per: 'boardFoot' | 'cubicMetre'; readonly amount: number };
  readonly freight: number;
  readonly invoiceBoardFeet?: number;
  readonly invoiceTotal?: number;
}
