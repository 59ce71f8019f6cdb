import type { Phrase } from '../../core/answer/phrase.ts';
import type { SourceId } from '../../core/answer/source-id.ts';

/** What a step list shows of one step, whatever work it belongs to. */
export interface FlowStep {
  readonly id: string;
  readonly title: Phrase;
  readonly todo: Phrase;
  readonly why?: Phrase;
  /** Where it is done, for example `jointer`. */
  readonly machine?: string;
  readonly target?: { readonly dimension: string; readonly value?: number; readonly tolerance: number };
  readonly cautions: readonly { readonly say: Phrase; readonly source: SourceId }[];
  readonly pieces: readonly { readonly id: string; readonly label: string; readonly target?: number }[];
  /** How long the work waits, in seconds. */
  readonly waits?: number;
}
