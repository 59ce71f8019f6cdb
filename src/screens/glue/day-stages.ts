import { isProblem } from '../../core/answer/problem.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import type { AdhesivePhase } from '../../core/gluing/adhesive.ts';
import type { PlannedStage, Window } from '../../core/gluing/day-plan.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import type { Shop } from '../../store/records/shop.ts';
import { runOf } from './glue-events.ts';
import { planStage, usualGlue } from './plan-stage.ts';
import { progressOf } from './stage-progress.ts';
import { type PieceStage, stagesOfPiece } from './stages-of-piece.ts';

interface Records {
  readonly pieces: readonly Piece[];
  readonly plans: readonly Plan[];
  readonly glueups: readonly Glueup[];
  readonly shop: Shop;
  /** Degrees Celsius in the shop; as at the last glue-up where it isn't known. */
  readonly celsius: number | undefined;
  readonly now: number;
}

export interface DayStages {
  readonly stages: readonly PlannedStage[];
  /** Ids of those that are in the glue already. */
  readonly running: ReadonlySet<string>;
  /** Stages that ask for more clamps than there are; they are planned with all of them. */
  readonly short: readonly { readonly name: string; readonly clamps: number }[];
}

export const clampsOwned = ({ clamps }: Pick<Shop, 'clamps'>): number => sumOf(clamps, ({ count }) => count);

/** Glue-ups of all unfinished pieces as the day's plan takes them: what runs, with what is left of it, and what is to come. */
export function dayStages({ pieces, plans, glueups, shop, celsius, now }: Records): DayStages {
  const owned = clampsOwned(shop);
  const held = glueups.flatMap((glueup) => heldStage(glueup, owned, now));
  const running = new Set(held.map(({ id }) => id));
  const toCome = pieces
    .filter(({ finishedAt }) => finishedAt === undefined)
    .flatMap((piece) => {
      const ofPiece = <R extends { readonly pieceId?: string }>(records: readonly R[]) =>
        records.filter(({ pieceId }) => pieceId === piece.id);
      const idOf = (stage: string) => `${piece.id}:${stage}`;
      const stages = stagesOfPiece(piece, planInHand(ofPiece(plans)), shop);
      const { begun } = progressOf(stages, ofPiece(glueups), now);
      return stages
        .filter(({ id }) => !begun.has(id))
        .map((stage): PlannedStage => {
          const needs = stage.needs.filter((id) => !begun.has(id) || running.has(idOf(id))).map(idOf);
          const name = `${piece.name}: ${stage.name}`;
          return { id: idOf(stage.id), name, needs, ...stageTimes(stage, { glueups, shop, celsius }) };
        });
    });
  return {
    stages: [...held, ...toCome.map((stage) => ({ ...stage, clamps: Math.min(stage.clamps, owned) }))],
    running,
    short: toCome.filter(({ clamps }) => clamps > owned),
  };
}

/** What is in the clamps or at rest, with what is left of that; nothing for a glue-up that is through. */
function heldStage(glueup: Glueup, owned: number, now: number): PlannedStage[] {
  const run = runOf(glueup);
  if (isProblem(run) || glueup.restedAt !== undefined) return [];
  const left = (phase: AdhesivePhase) =>
    Math.max(0, (run.phases.find(({ id }) => id === phase)?.until ?? 0) - now) / 1000;
  if (left('rest') === 0) return [];
  const clamped = glueup.unclampedAt === undefined;
  const clampSeconds = clamped ? left('clamp') : 0;
  return [
    {
      id: glueup.pieceId ? `${glueup.pieceId}:${glueup.stage}` : glueup.id,
      name: glueup.name,
      needs: [],
      handSeconds: 0,
      clampSeconds,
      restSeconds: left('rest') - clampSeconds,
      clamps: clamped ? Math.min(glueup.clamps ?? 0, owned) : 0,
    },
  ];
}

function stageTimes(stage: PieceStage, { glueups, shop, celsius }: Pick<Records, 'glueups' | 'shop' | 'celsius'>) {
  const { work, setting: clamps } = planStage(stage, usualGlue(glueups, celsius), shop);
  if (isProblem(work)) return { handSeconds: 0, clampSeconds: 0, restSeconds: 0, clamps };
  const { openSeconds, closedSeconds } = work.spread.value;
  const { clamp, rest } = work.times.value;
  return { handSeconds: openSeconds + closedSeconds, clampSeconds: clamp.most, restSeconds: rest.most, clamps };
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
