import { type Step, settledCount } from '../../core/steps/progress.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Milling } from '../../store/records/milling.ts';
import { partCount } from '../../store/records/part-count.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Square } from '../../store/records/square.ts';
import { howMany } from '../../ui/how-many.ts';

export type StageName = 'stock' | 'piece' | 'breakdown' | 'mill' | 'square' | 'glue' | 'finish';
export type StageState = 'open' | 'begun' | 'done';

export interface Stage {
  readonly name: StageName;
  readonly state: StageState;
  /** What to do there next, in a few words. */
  readonly next: string;
  /** The record that the screen opens with. */
  readonly id: string;
}

/** What counts of what is stored for one piece. */
export interface PieceRecords {
  readonly piece: Piece;
  /** The chosen one, or else the newest. */
  readonly plan: Plan | undefined;
  readonly milling: Milling | undefined;
  /** Its own, or that of the pieces finished with it. */
  readonly finish: Finish | undefined;
  readonly squares: readonly Square[];
  readonly glueups: readonly Glueup[];
}

function stepOf(run: Milling | Finish): string {
  const steps = run.steps as unknown as readonly Step[];
  return `Step ${Math.min(settledCount(run.ticks, steps) + 1, steps.length)} of ${steps.length}`;
}

/** One piece's thread from boards to cure, in the trade's order. Stages may be done out of order. */
export function jobThread({ piece, plan, milling, finish, squares, glueups }: PieceRecords, boards: number): Stage[] {
  const openGlueup = glueups.find(({ unclampedAt }) => unclampedAt === undefined);
  const stage = (name: StageName, state: StageState, next: string, id = piece.id): Stage => ({ name, state, next, id });
  const counted = (name: StageName, count: number, said: string, begin: string, id?: string) =>
    count > 0 ? stage(name, 'done', said, id) : stage(name, 'open', begin, id);
  const run = (name: StageName, its: Milling | Finish | undefined, said: string, begin: string) =>
    !its ? stage(name, 'open', begin) : its.finishedAt ? stage(name, 'done', said) : stage(name, 'begun', stepOf(its));
  return [
    counted('stock', boards, `${howMany(boards, 'board')} logged`, 'Log the boards you have', ''),
    counted('piece', piece.parts.length, howMany(partCount(piece), 'part'), 'List its parts'),
    plan && plan.short.length > 0
      ? stage('breakdown', 'begun', 'Short of wood: see what is missing')
      : counted('breakdown', plan ? 1 : 0, 'Planned', 'Plan the cuts'),
    run('mill', milling, 'Milled', 'Mill the blanks'),
    openGlueup
      ? stage('glue', 'begun', openGlueup.name)
      : counted('glue', glueups.length, `${glueups.length} unclamped`, 'Glue up'),
    counted('square', squares.length, 'Checked', 'Check it for square'),
    run('finish', finish, 'Finished', 'Plan the finish'),
  ];
}

const worked: readonly StageName[] = ['breakdown', 'mill', 'glue', 'finish'];

/**
 * The stage to turn to: one that is begun, or else the first open one after the furthest that is done, since what was
 * left out on the way is left out. Undefined once there is none.
 */
export function nextStage(thread: readonly Stage[]): Stage | undefined {
  const furthest = thread.findLastIndex(({ name, state }) => state !== 'open' && worked.includes(name));
  return (
    thread.findLast(({ name, state }) => state === 'begun' && name !== 'breakdown') ??
    thread.slice(furthest + 1).find(({ state }) => state === 'open')
  );
}
