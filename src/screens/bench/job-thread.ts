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

function stepOf(run: Milling | Finish | undefined): string {
  if (!run) return '';
  const steps = run.steps as unknown as readonly Step[];
  return `Step ${Math.min(settledCount(run.ticks, steps) + 1, steps.length)} of ${steps.length}`;
}

/** One piece's thread from boards to cure, in the trade's order. Stages may be done out of order. */
export function jobThread({ piece, plan, milling, finish, squares, glueups }: PieceRecords, boards: number): Stage[] {
  const openGlueup = glueups.find(({ unclampedAt }) => unclampedAt === undefined);
  const has = (yes: boolean): StageState => (yes ? 'done' : 'open');
  return [
    {
      name: 'stock',
      state: has(boards > 0),
      next: boards > 0 ? `${howMany(boards, 'board')} logged` : 'Log the boards you have',
      id: '',
    },
    {
      name: 'piece',
      state: has(piece.parts.length > 0),
      next: piece.parts.length > 0 ? howMany(partCount(piece), 'part') : 'List its parts',
      id: piece.id,
    },
    {
      name: 'breakdown',
      state: plan ? (plan.short.length > 0 ? 'begun' : 'done') : 'open',
      next: plan ? (plan.short.length > 0 ? 'Short of wood: see what is missing' : 'Planned') : 'Plan the cuts',
      id: piece.id,
    },
    {
      name: 'mill',
      state: milling?.finishedAt ? 'done' : milling ? 'begun' : 'open',
      next: milling?.finishedAt ? 'Milled' : milling ? stepOf(milling) : 'Mill the blanks',
      id: piece.id,
    },
    {
      name: 'glue',
      state: openGlueup ? 'begun' : has(glueups.length > 0),
      next: openGlueup ? openGlueup.name : glueups.length > 0 ? `${glueups.length} unclamped` : 'Glue up',
      id: piece.id,
    },
    {
      name: 'square',
      state: has(squares.length > 0),
      next: squares.length > 0 ? 'Checked' : 'Check it for square',
      id: piece.id,
    },
    {
      name: 'finish',
      state: finish?.finishedAt ? 'done' : finish ? 'begun' : 'open',
      next: finish?.finishedAt ? 'Finished' : finish ? stepOf(finish) : 'Plan the finish',
      id: piece.id,
    },
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
