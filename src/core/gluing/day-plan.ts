import { badInstant } from '../answer/bad-instant.ts';
import { badNumber } from '../answer/bad-number.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { count } from '../answer/quantity.ts';
import { type Needing, stageOrder } from './stage-order.ts';

/** One stage of the day: hands first, then clamps alone, then rest before anything else may be done to it. */
export interface PlannedStage extends Needing {
  /** Spreading, closing, clamping; or planing, when nothing is clamped. */
  readonly handSeconds: number;
  /** From tight to unclamped. */
  readonly clampSeconds: number;
  /** From unclamped until the next stage may use it. */
  readonly restSeconds: number;
  readonly clamps: number;
}

/** When a stage happens; instants in milliseconds since the epoch. */
export interface StageTimes {
  readonly id: string;
  readonly name: string;
  readonly from: number;
  /** Hands free: clamps are tight. */
  readonly clampedAt: number;
  readonly unclampAt: number;
  /** What waits for it may begin. */
  readonly readyAt: number;
  readonly clamps: number;
}

/** A stretch in which the maker is in the shop, ms since the epoch. */
export interface Window {
  readonly from: number;
  readonly until: number;
}

export interface DayPlanInput {
  readonly stages: readonly PlannedStage[];
  /** ms since the epoch */
  readonly start: number;
  readonly clampsOwned: number;
  /** When the maker is in the shop, in order; left out: always. Clamps hold and glue rests outside it as well. */
  readonly windows?: readonly Window[];
}

/** The first moment from which hands can work that long without leaving the shop. */
function inWindow(from: number, handMs: number, windows: readonly Window[] | undefined): number | undefined {
  if (!windows) return from;
  for (const window of windows) {
    const begin = Math.max(from, window.from);
    if (begin + handMs <= window.until) return begin;
  }
  return undefined;
}

/** Clamps in use at the busiest moment from `from` until `until`. */
function busiest(booked: readonly StageTimes[], from: number, until: number): number {
  const during = booked.filter((one) => one.from < until && one.unclampAt > from);
  const moments = [from, ...during.map((one) => one.from).filter((at) => at > from)];
  return Math.max(
    ...moments.map((at) =>
      during.filter((one) => one.from <= at && at < one.unclampAt).reduce((sum, one) => sum + one.clamps, 0),
    ),
  );
}

/**
 * The stages of all pieces along the clock: one pair of hands, the clamps that there are, and every wait kept.
 *
 * Stages are taken in order, each at the first moment when what it needs is ready, the hands are free and enough
 * clamps are off. A later stage may slip in before an earlier one that still waits.
 *
 * @param input stages with seconds, start in ms since the epoch, clamps owned
 * @returns when each stage begins, is clamped, is unclamped and is ready, in order of beginning
 *
 * Valid: one maker; clamps of one kind. The order in which stages are taken is kept simple, not proved the shortest.
 * Errors: as `stageOrder`; a negative wait; a stage that asks for more clamps than there are; no stretch in the shop long enough.
 * Example: two sub-panels of 10 minutes' work, an hour in clamps: the second begins at 10 minutes if there are clamps for both, else at 70.
 * Source: list scheduling.
 */
export function dayPlan({ stages, start, clampsOwned, windows }: DayPlanInput): Outcome<readonly StageTimes[]> {
  const ordered = stageOrder(stages);
  if (isProblem(ordered)) return ordered;
  const bad =
    badInstant('start', 'The start', start) ??
    badNumber('clampsOwned', 'The number of clamps', clampsOwned, 'count', { least: 0, most: 1000, whole: true });
  if (bad) return bad;
  for (const [index, stage] of stages.entries()) {
    const limits = { least: 0, most: 60 * 86400 };
    const wrong =
      badNumber(`stages.${index}.handSeconds`, `The work for ${stage.name}`, stage.handSeconds, 'seconds', limits) ??
      badNumber(
        `stages.${index}.clampSeconds`,
        `The clamp time of ${stage.name}`,
        stage.clampSeconds,
        'seconds',
        limits,
      ) ??
      badNumber(`stages.${index}.restSeconds`, `The rest of ${stage.name}`, stage.restSeconds, 'seconds', limits) ??
      badNumber(`stages.${index}.clamps`, `The clamps for ${stage.name}`, stage.clamps, 'count', {
        least: 0,
        whole: true,
      });
    if (wrong) return wrong;
    if (stage.clamps > clampsOwned)
      return problem(
        `stages.${index}.clamps`,
        `${stage.name} takes {needed} clamps and you have {owned}. Split it, or use wider cauls.`,
        { needed: count(stage.clamps), owned: count(clampsOwned) },
      );
  }

  const planned: StageTimes[] = [];
  let waiting = [...ordered];
  let handsFree = start;
  while (waiting.length > 0) {
    let best: StageTimes | undefined;
    for (const stage of waiting) {
      if (stage.needs.some((id) => waiting.some((other) => other.id === id))) continue;
      const times = earliest(stage, planned, handsFree, clampsOwned, windows);
      if (times && (!best || times.from < best.from)) best = times;
    }
    if (!best) return problem('windows', 'No stretch in the shop is long enough for the next stage. Plan more time.');
    const placed = best;
    planned.push(placed);
    waiting = waiting.filter(({ id }) => id !== placed.id);
    handsFree = placed.clampedAt;
  }
  return planned;
}

function earliest(
  stage: PlannedStage,
  planned: readonly StageTimes[],
  handsFree: number,
  clampsOwned: number,
  windows: readonly Window[] | undefined,
): StageTimes | undefined {
  const handMs = stage.handSeconds * 1000;
  const clampMs = stage.clampSeconds * 1000;
  const ready = Math.max(handsFree, ...planned.filter(({ id }) => stage.needs.includes(id)).map((one) => one.readyAt));
  // Clamps only come free when a stage is unclamped: these are the only moments worth trying.
  const moments = [ready, ...planned.map((one) => one.unclampAt).filter((at) => at > ready)].sort((a, b) => a - b);
  for (const moment of moments) {
    const from = inWindow(moment, handMs, windows);
    if (from === undefined) return undefined;
    const unclampAt = from + handMs + clampMs;
    if (busiest(planned, from, unclampAt) + stage.clamps > clampsOwned) continue;
    return {
      id: stage.id,
      name: stage.name,
      from,
      clampedAt: from + handMs,
      unclampAt,
      readyAt: unclampAt + stage.restSeconds * 1000,
      clamps: stage.clamps,
    };
  }
  return undefined;
}
