import { type Step, settledCount } from '../../core/steps/progress.ts';
import type { Board } from '../../store/records/board.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Square } from '../../store/records/square.ts';

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

/** What is stored for one piece, with all the boards. */
export interface Records {
  readonly boards: readonly Board[];
  readonly piece: Piece;
  readonly plans: readonly Plan[];
  readonly millings: readonly Milling[];
  readonly squares: readonly Square[];
  readonly glueups: readonly Glueup[];
  readonly finishes: readonly Finish[];
}

const newest = <R extends { readonly updated: number }>(records: readonly R[]): R | undefined =>
  records.reduce<R | undefined>((best, record) => (best && best.updated >= record.updated ? best : record), undefined);

function stepOf(run: Milling | Finish | undefined): string {
  if (!run) return '';
  const steps = run.steps as unknown as readonly Step[];
  return `Step ${Math.min(settledCount(run.ticks, steps) + 1, steps.length)} of ${steps.length}`;
}

/** One piece's thread from boards to cure, in the trade's order. Stages may be done out of order. */
export function jobThread(records: Records): Stage[] {
  const { boards, piece, plans, millings, squares, glueups, finishes } = records;
  const plan = plans.find(({ chosen }) => chosen) ?? newest(plans);
  const milling = newest(millings);
  const finish = newest(finishes);
  const openGlueup = glueups.find(({ unclampedAt }) => unclampedAt === undefined);
  const has = (yes: boolean): StageState => (yes ? 'done' : 'open');
  return [
    {
      name: 'stock',
      state: has(boards.length > 0),
      next:
        boards.length > 0
          ? `${boards.length} ${boards.length === 1 ? 'board' : 'boards'} logged`
          : 'Log the boards you have',
      id: '',
    },
    {
      name: 'piece',
      state: has(piece.parts.length > 0),
      next:
        piece.parts.length > 0
          ? `${piece.parts.length} ${piece.parts.length === 1 ? 'part' : 'parts'}`
          : 'List its parts',
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

/** The stage to turn to: one that is begun, or else the first that is open. Undefined once all is done. */
export function nextStage(thread: readonly Stage[]): Stage | undefined {
  return thread.findLast(({ state }) => state === 'begun') ?? thread.find(({ state }) => state === 'open');
}
