import type { Phrase } from '../answer/phrase.ts';
import type { SourceId } from '../answer/source-id.ts';

export type FinishStage = 'prepare' | 'sand' | 'sample' | 'coat' | 'rags' | 'rub' | 'cure';

/** One step of a finish schedule: plain data, stored as it is. */
export interface FinishStep {
  /** Unique in its schedule and the same each time it is made, so that ticks stay with their steps. */
  readonly id: string;
  readonly stage: FinishStage;
  readonly title: Phrase;
  readonly todo: Phrase;
  readonly why?: Phrase;
  readonly cautions: readonly Phrase[];
  /** Waits that begin when the step is ticked, in order; seconds. */
  readonly waits: readonly FinishWait[];
  readonly source: SourceId;
}

export interface FinishWait {
  readonly name: string;
  readonly leastSeconds: number;
  /** After this it is late; left out where nothing is lost by waiting longer. */
  readonly mostSeconds?: number;
}
