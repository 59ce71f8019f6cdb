import { isProblem, type Outcome, type Problem } from '../../core/answer/problem.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import type { AdhesivePhase } from '../../core/gluing/adhesive.ts';
import type { PlannedStage, StageTimes, Window } from '../../core/gluing/day-plan.ts';
import type { GluePhase } from '../../core/gluing/glue-up.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Milling } from '../../store/records/milling.ts';
import { newest } from '../../store/records/newest.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import type { Shop } from '../../store/records/shop.ts';
import { ownedClamps } from './clamp-force.ts';
import { runOf } from './glue-events.ts';
import { planStage, usualGlue } from './plan-stage.ts';
import { progressOf } from './stage-progress.ts';
import { stagesOfPiece } from './stages-of-piece.ts';

interface Records {
  readonly pieces: readonly Piece[];
  readonly plans: readonly Plan[];
  readonly millings: readonly Milling[];
  readonly glueups: readonly Glueup[];
  readonly shop: Shop;
  /** Degrees Celsius in the shop; as at the last glue-up where it isn't known. */
  readonly celsius: number | undefined;
  readonly now: number;
}

export interface DayStages {
  /** Still to be glued; none while the glue can't be used. */
  readonly stages: readonly PlannedStage[];
  /** What is in the clamps or at rest. */
  readonly running: readonly StageTimes[];
  /** Stages that ask for more clamps than there are; they are planned with all of them. */
  readonly short: readonly { readonly name: string; readonly clamps: number }[];
  /** Why nothing can be glued in today's air. */
  readonly refused: Problem | undefined;
}

export const clampsOwned = ({ clamps }: Pick<Shop, 'clamps'>): number =>
  sumOf(ownedClamps(clamps), ({ count }) => count);

/** Glue-ups of all unfinished pieces as the day's plan takes them: what runs, with what is left of it, and what is to come. */
export function dayStages({ pieces, plans, millings, glueups, shop, celsius, now }: Records): DayStages {
  const owned = clampsOwned(shop);
  const glue = usualGlue(glueups, celsius);
  const running = glueups.flatMap((glueup) => held(glueup, now));
  const asked = pieces
    .filter(({ finishedAt }) => finishedAt === undefined)
    .flatMap((piece) => {
      const ofPiece = <R extends { readonly pieceId?: string }>(records: readonly R[]) =>
        records.filter(({ pieceId }) => pieceId === piece.id);
      const idOf = (stage: string) => `${piece.id}:${stage}`;
      const own = ofPiece(glueups);
      const stages = stagesOfPiece(piece, planInHand(ofPiece(plans)), shop);
      const { begun } = progressOf(stages, own, now, newest(ofPiece(millings)));
      const heldBy = (stage: string) =>
        running.filter(({ id }) => own.some((glueup) => glueup.id === id && glueup.stage === stage));
      return stages
        .filter(({ id }) => !begun.has(id))
        .map((stage): Outcome<PlannedStage> => {
          const { work, setting: clamps } = planStage(stage, glue, shop);
          if (isProblem(work)) return work;
          const { openSeconds, closedSeconds } = work.spread.value;
          const { clamp, rest } = work.times.value;
          return {
            id: idOf(stage.id),
            name: `${piece.name}: ${stage.name}`,
            needs: stage.needs.flatMap((id) => (begun.has(id) ? heldBy(id).map((one) => one.id) : idOf(id))),
            handSeconds: openSeconds + closedSeconds,
            clampSeconds: clamp.most,
            restSeconds: rest.most,
            clamps,
          };
        });
    });
  const refused = asked.find(isProblem);
  const toCome = refused ? [] : (asked as PlannedStage[]);
  return {
    stages: toCome.map((stage) => ({ ...stage, clamps: Math.min(stage.clamps, owned) })),
    running,
    short: toCome.filter(({ clamps }) => clamps > owned),
    refused,
  };
}

/** What is in the clamps or at rest, with what is left of that; nothing for a glue-up that is through. */
function held(glueup: Glueup, now: number): StageTimes[] {
  const { id, name, unclampedAt, restedAt, clamps = 0 } = glueup;
  const run = runOf(glueup);
  if (isProblem(run) || restedAt !== undefined) return [];
  const phase = (wanted: AdhesivePhase) => run.phases.find((one) => one.id === wanted) as GluePhase;
  // Nobody has taken the clamps off yet: at the earliest that happens now, and it rests only from then on.
  const unclampAt = unclampedAt ?? Math.max(now, phase('clamp').until);
  const readyAt = unclampAt + phase('rest').takes.most * 1000;
  return readyAt <= now ? [] : [{ id, name, from: now, clampedAt: now, unclampAt, readyAt, clamps }];
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
