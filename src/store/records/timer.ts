import type { Kind } from './kinds.ts';
import type { StoredRecord } from './record.ts';

/** A running timer. It holds the instant it ends, so that a killed tab loses nothing. */
export interface Timer extends StoredRecord {
  readonly name: string;
  readonly for: { readonly kind: Kind; readonly id: string };
  readonly phase: string;
  /** The step of a list that waits for it. */
  readonly step?: string;
  readonly startedAt: number;
  readonly endsAt: number;
  readonly doneAt?: number;
}
