import type { FinishWait } from '../../core/finishing/finish-step.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Fields } from '../../store/records/record.ts';
import type { Timer } from '../../store/records/timer.ts';
import { coatNumber, type KeptStep, stepsOf } from './finish-steps.ts';

/** The timers of waits that begin now; `name` says for what they run. */
export const timersOf = (finishId: string, waits: readonly FinishWait[], name: string, now: number): Fields<Timer>[] =>
  waits.map((wait) => ({
    name,
    for: { kind: 'finish', id: finishId },
    phase: wait.name,
    startedAt: now,
    endsAt: now + wait.leastSeconds * 1000,
  }));

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
 * Waits of the step's own kind are left alone: while the second door is wiped on, the first still wants wiping off.
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
    return endsAt <= now && !step.waits.some((wait) => wait.name === phase);
  });
}

/** The timers that a tick at this moment began: they go with it. */
export const begunBy = (timers: readonly Timer[], tickedAt: number | undefined): readonly Timer[] =>
  timers.filter(({ startedAt, doneAt }) => startedAt === tickedAt && doneAt === undefined);
