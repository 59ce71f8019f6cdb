import type { SourceId } from '../answer/source-id.ts';

/** A limit of a machine in mm, and where it comes from: `label` when the maker typed it in from the manual. */
export interface Limit {
  readonly mm: number;
  readonly source: SourceId;
}

/** What a machine may be given. Below the least of any dimension a piece takes another way. */
export interface MachineLimit {
  readonly leastLength: Limit;
  readonly leastWidth: Limit;
  readonly leastThickness: Limit;
  /** The most that one pass takes off; for a saw the deepest cut. */
  readonly depthPerPass: Limit;
}

/** Machines with a least size that their manual may name. */
export const limitedMachines = ['jointer', 'planer', 'tableSaw', 'guidedSaw', 'router'] as const;
export type LimitedMachine = (typeof limitedMachines)[number];

export interface MachineLimits extends Readonly<Record<LimitedMachine, MachineLimit>> {
  /** Least length of a piece that goes through the planer on a carrier board between glued-on rails. */
  readonly carrierLength: Limit;
  /** Below this width, hands stay away and push blocks or push sticks feed the piece. */
  readonly pushBlockWidth: Limit;
  /** The shortest, the longest and the widest piece that is crosscut on a table saw's sled. */
  readonly sledLeast: Limit;
  readonly sledLength: Limit;
  readonly sledWidth: Limit;
}
