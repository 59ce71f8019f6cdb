import type { Phrase } from '../answer/phrase.ts';
import type { SourceId } from '../answer/source-id.ts';

/** Where a step is done. */
export type Machine =
  | 'bench'
  | 'guided saw'
  | 'table saw'
  | 'mitre saw'
  | 'hand saw'
  | 'jointer'
  | 'planer'
  | 'router'
  | 'hand plane'
  | 'clamps'
  | 'rack';

/** The order of work: a step of a later stage never comes before one of an earlier stage on the same wood. */
export const stages = [
  'decide',
  'mark out',
  'crosscut rough',
  'rip rough',
  'rest ripped',
  'first flattening',
  'first thickness',
  'rest',
  'face',
  'mark face',
  'edge',
  'mark edge',
  'thickness',
  'rip parallel',
  'sawn edge',
  'panel order',
  'glue',
  'glue rest',
  'level panel',
  'panel seam',
  'glue panels',
  'glue panels rest',
  'flush seams',
  'final width',
  'crosscut',
  'fold',
] as const;
export type Stage = (typeof stages)[number];

export type Dimension = 'thickness' | 'width' | 'length';

export interface Size {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

/** One piece of wood that a step is ticked for. */
export interface StepPiece {
  readonly id: string;
  /** What is chalked or pencilled on it, for example `B3 · lid strip 2`. */
  readonly label: string;
  /** As it comes to this step, in mm. */
  readonly size: Size;
  /** Its own figure in mm where the step's pieces differ; otherwise the step's target holds. */
  readonly target?: number;
  /** The pieces of earlier steps that it is made of, when it has another id than they had. */
  readonly from?: readonly string[];
}

export interface Target {
  readonly dimension: Dimension;
  /** In mm. Absent where every piece carries its own. */
  readonly value?: number;
  readonly tolerance: number;
}

export interface Caution {
  readonly say: Phrase;
  readonly source: SourceId;
}

/** One step at one machine, for all the pieces that are done at that setting. Plain data: runs are stored as JSON. */
export interface MillingStep {
  /** The same for the same work, so that ticks survive a new plan. */
  readonly id: string;
  readonly stage: Stage;
  readonly machine: Machine;
  readonly title: Phrase;
  readonly todo: Phrase;
  readonly why: Phrase;
  readonly target?: Target;
  readonly cautions: readonly Caution[];
  readonly pieces: readonly StepPiece[];
  /** The pieces are fixed to a carrier that is large enough for the machine. */
  readonly carrier?: true;
  /** How long the wood waits, in seconds. */
  readonly waits?: number;
}
