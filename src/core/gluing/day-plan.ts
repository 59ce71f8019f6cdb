import { badInstant } from '../answer/bad-instant.ts';
import { firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import type { Needing } from './can-begin-now.ts';
import { clampsAt } from './clamps-at.ts';

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
  /** In the clamps or at rest already, with what is left of that: nothing holds it up any more. */
  readonly running?: readonly StageTimes[];
  /** ms since the epoch */
  readonly start: number;
  readonly clampsOwned: number;
  /** When the maker is in the shop, in order; left out: always. Clamps hold and glue rests outside it as well. */
  readonly windows?: readonly Window[];
}

function badInput({ stages, running = [], start, clampsOwned }: DayPlanInput): Problem | undefined {
  const longest = { least: 0, most: 60 * 86400 };
  const clampsOf = { least: 0, most: clampsOwned, whole: true };
  const ids = [...running, ...stages].map(({ id }) => id);
  for (const [at, { id, name, needs }] of stages.entries()) {
    if (ids.indexOf(id) < running.length + at) return problem(`stages.${at}.id`, `Two stages have the id of ${name}.`);
    if (!needs.every((needed) => ids.includes(needed)))
      return problem(`stages.${at}.needs`, `${name} waits for a stage that isn’t there. Add it, or don’t wait.`);
  }
  return (
    badInstant('start', 'The start', start) ??
    firstBad([
      ['clampsOwned', 'The number of clamps', clampsOwned, 'count', { least: 0, most: 1000, whole: true }],
      ...stages.flatMap((stage, at): NumberCheck[] => [
        ...(['handSeconds', 'clampSeconds', 'restSeconds'] as const).map(
          (time): NumberCheck => [`stages.${at}.${time}`, `A time of ${stage.name}`, stage[time], 'seconds', longest],
        ),
        [`stages.${at}.clamps`, `The clamps for ${stage.name}`, stage.clamps, 'count', clampsOf],
      ]),
    ])
  );
}

/**
 * The stages of all pieces along the clock: one pair of hands, the clamps that there are, and every wait kept.
 *
 * Stages are taken in order, each at the first moment when what it needs is ready, the hands are free and enough
 * clamps are off. A later stage may slip in before an earlier one that still waits.
 *
 * @param input stages with seconds, those that run with their instants, start in ms since the epoch, clamps owned
 * @returns when each stage begins, is clamped, is unclamped and is ready, in order of beginning; what runs comes first
 * @valid one maker; clamps of one kind. The order in which stages are taken is kept simple, not proved the shortest
 * @errors two stages with one id; one that needs one that isn't there; stages that wait for each other, named; a
 *   negative wait; a stage that asks for more clamps than there are; no stretch in the shop long enough
 * @example dayPlan({
 *   stages: ['a', 'b'].map((id) => ({
 *     id,
 *     name: id,
 *     needs: [],
 *     handSeconds: 600,
 *     clampSeconds: 3600,
 *     restSeconds: 0,
 *     clamps: 4,
 *   })),
 *   start: 0,
 *   clampsOwned: 4,
 * }) // => [{ from: 0 }, { from: 70 * 60_000 }]
 * @source list scheduling
 */
export function dayPlan(input: DayPlanInput): Outcome<readonly StageTimes[]> {
  const bad = badInput(input);
  if (bad) return bad;

  const planned = [...(input.running ?? [])];
  let waiting = input.stages;
  while (waiting.length > 0) {
    const isWaiting = new Set(waiting.map(({ id }) => id));
    const free = waiting.filter(({ needs }) => !needs.some((id) => isWaiting.has(id)));
    if (free.length === 0) {
      const names = ringOf(waiting).map(({ name }) => name);
      return problem('stages', `These wait for each other: ${names.join(', ')}. Take out one of the waits.`);
    }
    const [next] = free.flatMap((stage) => earliest(stage, planned, input) ?? []).sort((a, b) => a.from - b.from);
    if (!next) return problem('windows', 'No stretch in the shop is long enough for the next stage.');
    planned.push(next);
    waiting = waiting.filter(({ id }) => id !== next.id);
  }
  return planned;
}

/** Of stages that all wait, those that wait for each other: what nothing waits for is left out, as long as there is any. */
function ringOf(waiting: readonly Needing[]): readonly Needing[] {
  const needed = waiting.filter(({ id }) => waiting.some(({ needs }) => needs.includes(id)));
  return needed.length < waiting.length ? ringOf(needed) : needed;
}

/** The first time for a stage: what it needs is ready, the hands are free, the maker is there, enough clamps are off. */
function earliest(
  { id, name, needs, handSeconds, clampSeconds, restSeconds, clamps }: PlannedStage,
  planned: readonly StageTimes[],
  { start, clampsOwned, windows = [{ from: start, until: Number.POSITIVE_INFINITY }] }: DayPlanInput,
): StageTimes | undefined {
  const handsFree = planned.at(-1)?.clampedAt ?? start;
  const ready = Math.max(
    start,
    handsFree,
    ...planned.filter((one) => needs.includes(one.id)).map((one) => one.readyAt),
  );
  const clampedAfter = handSeconds * 1000;
  const takes = clampedAfter + clampSeconds * 1000;
  const inShop = (from: number) => windows.some((one) => one.from <= from && from + clampedAfter <= one.until);
  const clampsFree = (from: number) =>
    [from, ...planned.map((one) => one.from)].every(
      (at) => at < from || at >= from + takes || clampsAt(planned, at) + clamps <= clampsOwned,
    );
  // Clamps only come free when a stage is unclamped: beside the hours in the shop no other moment is worth a try.
  const from = [ready, ...planned.map((one) => one.unclampAt), ...windows.map((one) => one.from)]
    .filter((at) => at >= ready)
    .sort((a, b) => a - b)
    .find((at) => inShop(at) && clampsFree(at));
  if (from === undefined) return undefined;
  const unclampAt = from + takes;
  return { id, name, from, clampedAt: from + clampedAfter, unclampAt, readyAt: unclampAt + restSeconds * 1000, clamps };
}
