import { isProblem } from '../../core/answer/problem.ts';
import type { PlannedStage, Window } from '../../core/gluing/day-plan.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Shop } from '../../store/records/shop.ts';
import { runOf } from './glue-events.ts';
import { planStage, usualGlue } from './plan-stage.ts';
import { progressOf } from './stage-progress.ts';
import { type PieceStage, planOf, stagesOfPiece } from './stages-of-piece.ts';

interface Records {
  readonly pieces: readonly Piece[];
  readonly plans: readonly Plan[];
  readonly glueups: readonly Glueup[];
  readonly shop: Shop;
  /** Degrees Celsius in the shop. */
  readonly celsius: number;
  readonly now: number;
}

export interface DayStages {
  readonly stages: readonly PlannedStage[];
  /** Ids of those that are in the glue already. */
  readonly running: ReadonlySet<string>;
  /** Stages that ask for more clamps than there are; they are planned with all of them. */
  readonly short: readonly { readonly name: string; readonly clamps: number }[];
}

export const clampsOwned = ({ clamps }: Pick<Shop, 'clamps'>): number =>
  clamps.reduce((sum, { count }) => sum + count, 0);

/** Glue-ups of all unfinished pieces as the day's plan takes them: what runs, with what is left of it, and what is to come. */
export function dayStages({ pieces, plans, glueups, shop, celsius, now }: Records): DayStages {
  const owned = clampsOwned(shop);
  const short: { name: string; clamps: number }[] = [];
  const open = pieces.filter(({ finishedAt }) => finishedAt === undefined);
  const idOf = (glueup: Glueup) => (glueup.pieceId ? `${glueup.pieceId}:${glueup.stage}` : glueup.id);

  const held = glueups
    .filter((glueup) => isHeld(glueup, now))
    .map((glueup) => heldStage(glueup, idOf(glueup), owned, now));
  const running = new Set(held.map(({ id }) => id));
  const toCome = open.flatMap((piece) => {
    const stages = stagesOfPiece(piece, planOf(plans.filter(({ pieceId }) => pieceId === piece.id)), shop);
    const { begun } = progressOf(
      stages,
      glueups.filter(({ pieceId }) => pieceId === piece.id),
      now,
    );
    return stages
      .filter(({ id }) => !begun.has(id))
      .map((stage): PlannedStage => {
        const { clamps, ...times } = stageTimes(stage, { glueups, shop, celsius });
        const name = `${piece.name}: ${stage.name}`;
        if (clamps > owned) short.push({ name, clamps });
        return {
          id: `${piece.id}:${stage.id}`,
          name,
          needs: stage.needs
            .filter((id) => !begun.has(id) || running.has(`${piece.id}:${id}`))
            .map((id) => `${piece.id}:${id}`),
          clamps: Math.min(clamps, owned),
          ...times,
        };
      });
  });
  return { stages: [...held, ...toCome], running, short };
}

/** In the clamps, or at rest. */
function isHeld(glueup: Glueup, now: number): boolean {
  if (glueup.restedAt !== undefined) return false;
  const run = runOf(glueup);
  return !isProblem(run) && (run.phases.find(({ id }) => id === 'rest')?.until ?? 0) > now;
}

function heldStage(glueup: Glueup, id: string, owned: number, now: number): PlannedStage {
  const run = runOf(glueup);
  const left = (phase: 'clamp' | 'rest') =>
    isProblem(run) ? 0 : Math.max(0, ((run.phases.find((one) => one.id === phase)?.until ?? now) - now) / 1000);
  const clamped = glueup.unclampedAt === undefined;
  return {
    id,
    name: glueup.name,
    needs: [],
    handSeconds: 0,
    clampSeconds: clamped ? left('clamp') : 0,
    restSeconds: Math.max(0, left('rest') - (clamped ? left('clamp') : 0)),
    clamps: clamped ? Math.min(glueup.clamps ?? 0, owned) : 0,
  };
}

function stageTimes(stage: PieceStage, { glueups, shop, celsius }: Pick<Records, 'glueups' | 'shop' | 'celsius'>) {
  const { times, time, clamps } = planStage(stage, usualGlue(glueups, celsius), shop);
  const needed = clamps && !isProblem(clamps) ? clamps.needed.value.clamps : 0;
  if (isProblem(times) || isProblem(time)) return { handSeconds: 0, clampSeconds: 0, restSeconds: 0, clamps: needed };
  const { openSeconds, closedSeconds } = time.spread.value;
  return {
    handSeconds: openSeconds + closedSeconds,
    clampSeconds: times.value.clamp.most,
    restSeconds: times.value.rest.most,
    clamps: needed,
  };
}

/** The next days' hours in the shop, from an hour of the day to another, by the clock on the wall. */
export function shopHours(now: number, from: number, until: number, days = 21): Window[] {
  return Array.from({ length: days }, (_, day) => {
    const at = (hour: number) => {
      const date = new Date(now);
      date.setDate(date.getDate() + day);
      date.setHours(hour, 0, 0, 0);
      return date.getTime();
    };
    return { from: Math.max(at(from), now), until: at(until) };
  }).filter((window) => window.until > window.from);
}
