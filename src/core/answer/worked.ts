import type { Phrase } from './phrase.ts';
import type { Quantity } from './quantity.ts';
import type { SourceId } from './source-id.ts';

/** One step from inputs towards a result. */
export interface WorkingStep {
  /** What this step finds, for example `surface measure`. */
  readonly finds: string;
  /** The formula in words, with the quantities that go into it. */
  readonly by: Phrase;
  readonly gives: Quantity;
}

/** How a number came about: the steps, where the method holds, and what it rests on. */
export interface Working {
  readonly steps: readonly WorkingStep[];
  /** The range in which the method holds, in words. */
  readonly holds?: Phrase;
  readonly sources: readonly SourceId[];
}

/** A value that can show how it was found. */
export interface Worked<T = number> {
  readonly value: T;
  readonly working: Working;
}
