import type { Ticks } from '../../core/steps/progress.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Fields } from '../../store/records/record.ts';
import type { Timer } from '../../store/records/timer.ts';
import { coatNumber, type KeptStep, stepsOf } from './finish-steps.ts';

/** The pieces of a step that are through. */
export const throughOf = (ticks: Ticks, stepId: string): ReadonlySet<string> => new Set(ticks[stepId]?.pieces ?? []);

const isDone = (ticks: Ticks, { id, pieces }: KeptStep): boolean => {
  const tick = ticks[id];
  return tick !== undefined && (tick.skipped !== undefined || pieces.every((piece) => tick.pieces.includes(piece.id)));
};

/** The place of the first step that is not through; the last one when all are. */
export function nextStepAt(finish: Finish): number {
  const steps = stepsOf(finish);
  const at = steps.findIndex((step) => !isDone(finish.ticks, step));
  return at < 0 ? steps.length - 1 : at;
}

function withTicks(finish: Finish, ticks: Ticks, now: number): Finish {
  const { finishedAt: _, ...open } = finish;
  return stepsOf(finish).every((step) => isDone(ticks, step))
    ? { ...open, ticks, finishedAt: now }
    : { ...open, ticks };
}

/** The finish with pieces of a step ticked, or unticked. It is finished once every step is through. */
export function tickStep(
  finish: Finish,
  step: KeptStep,
  pieceIds: readonly string[],
  on: boolean,
  now: number,
): Finish {
  const before = finish.ticks[step.id]?.pieces ?? [];
  const others = before.filter((id) => !pieceIds.includes(id));
  const pieces = on ? [...others, ...pieceIds] : others;
  const { [step.id]: _, ...rest } = finish.ticks;
  const ticks = pieces.length === 0 ? rest : { ...rest, [step.id]: { pieces, at: now } };
  return withTicks(finish, ticks, now);
}

export function skipStep(finish: Finish, step: KeptStep, reason: string, now: number): Finish {
  const pieces = finish.ticks[step.id]?.pieces ?? [];
  return withTicks(finish, { ...finish.ticks, [step.id]: { pieces, skipped: reason, at: now } }, now);
}

/** The timers of the waits that begin when these pieces of a step are ticked. */
export function timersOf(finishId: string, step: KeptStep, pieceIds: readonly string[], now: number): Fields<Timer>[] {
  const name = step.pieces
    .filter(({ id }) => pieceIds.includes(id))
    .map(({ label }) => label)
    .join(', ');
  return step.waits.map((wait) => ({
    name,
    for: { kind: 'finish', id: finishId },
    phase: wait.name,
    startedAt: now,
    endsAt: now + wait.leastSeconds * 1000,
  }));
}

const potLife = 'Pot life';

/** What a batch's pot life is called among the timers; batches are counted from 1. */
export const potLifePhase = (step: KeptStep, batch: number) => `${potLife}, coat ${coatNumber(step)}, batch ${batch}`;

/** Whether a tick of these pieces ends a coat: all of them are coated, and no section is left. */
export function endsCoat(finish: Finish, step: KeptStep, pieceIds: readonly string[]): boolean {
  const steps = stepsOf(finish);
  const after = steps[steps.findIndex(({ id }) => id === step.id) + 1];
  const through = new Set([...(finish.ticks[step.id]?.pieces ?? []), ...pieceIds]);
  return (
    step.stage === 'coat' &&
    (!after || coatNumber(after) !== coatNumber(step)) &&
    step.pieces.every(({ id }) => through.has(id))
  );
}

/**
 * The timers that are over once pieces of a step are ticked: those that have ended, and after a coat its pot life.
 * A coat leaves waits of its own kind alone: while the second door is wiped on, the first still wants wiping off.
 */
export function overBy(
  timers: readonly Timer[],
  finish: Finish,
  step: KeptStep,
  pieceIds: readonly string[],
  now: number,
): readonly Timer[] {
  const coated = endsCoat(finish, step, pieceIds);
  return timers.filter(({ doneAt, endsAt, phase }) => {
    if (doneAt !== undefined) return false;
    if (coated && phase.startsWith(potLife)) return true;
    return endsAt <= now && !(step.stage === 'coat' && step.waits.some((wait) => wait.name === phase));
  });
}

/** The timers that a tick at this moment began: they go with it. */
export const begunBy = (timers: readonly Timer[], tickedAt: number | undefined): readonly Timer[] =>
  timers.filter(({ startedAt, doneAt }) => startedAt === tickedAt && doneAt === undefined);
