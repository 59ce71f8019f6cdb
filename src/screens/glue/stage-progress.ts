import { isProblem } from '../../core/answer/problem.ts';
import { canBeginNow } from '../../core/gluing/can-begin-now.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Milling } from '../../store/records/milling.ts';
import { phaseOf } from './glue-events.ts';
import { gluedByRun } from './glued-by-run.ts';
import type { PieceStage } from './stages-of-piece.ts';

export interface Progress {
  /** Stages that can be glued now, in order. */
  readonly now: readonly PieceStage[];
  /** Ids of stages that are in the clamps or at rest, or done. */
  readonly begun: ReadonlySet<string>;
  /** Ids of stages that what needs them may use. */
  readonly ready: ReadonlySet<string>;
}

/** Whether it may go on: the maker has said so, or the rest has passed. */
export function isReady(glueup: Glueup, now: number): boolean {
  if (glueup.restedAt !== undefined) return true;
  const at = phaseOf(glueup, now);
  return !isProblem(at) && at.phase?.id === 'rest' && at.left <= 0;
}

/** How far the stages of one piece are, by its glue-ups and by the run that mills it; ms since the epoch. */
export function progressOf(
  stages: readonly PieceStage[],
  glueups: readonly Glueup[],
  now: number,
  run?: Milling,
): Progress {
  const milled = gluedByRun(
    stages.map(({ id }) => id),
    run,
  );
  const begun = new Set([...milled, ...glueups.map(({ stage }) => stage)]);
  const ready = new Set([...milled, ...glueups.filter((one) => isReady(one, now)).map(({ stage }) => stage)]);
  return { now: canBeginNow(stages, begun, ready), begun, ready };
}
