import type { FinishWait } from '../../core/finishing/finish-step.ts';
import type { StepTicks } from '../../core/steps/progress.ts';
import type { Change } from '../../store/commit.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Fields } from '../../store/records/record.ts';
import type { Timer } from '../../store/records/timer.ts';
import { withOptional } from '../../store/records/with-optional.ts';
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
 * The timers that are over once pieces of a step are ticked: those that have ended, and after a coat its pot life
 * and what it should have waited for.
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
    if (coated && (phase.startsWith(potLife) || phase === `Before coat ${coatNumber(step)}`)) return true;
    return endsAt <= now && !step.waits.some((wait) => wait.name === phase);
  });
}

/**
 * What becomes of the waits that a tick began or ended once it is taken back. Pieces that were ticked together wait under their
 * names in one: it goes on for the others.
 */
export function waitsTakenBack(
  timers: readonly Timer[],
  { waits, pieces }: KeptStep,
  before: StepTicks | undefined,
  after: StepTicks | undefined,
): Change[] {
  const at = before?.at ?? 0;
  const lost = pieces.find(({ id }) => before?.pieces.includes(id) && !after?.pieces.includes(id))?.label;
  const namesOf = ({ name }: Timer) => (name === lost ? [name] : name.split(', '));
  const running = timers.filter(({ doneAt, startedAt }) => doneAt === undefined && startedAt <= at);
  // Of a coat in sections each has its waits, called alike: the latest by then is this step's.
  const latest = (phase: string) =>
    running
      .filter((one) => one.phase === phase && namesOf(one).includes(lost ?? ''))
      .sort((a, b) => b.startedAt - a.startedAt)
      .slice(0, 1);
  const begun =
    pieces.length === 0
      ? running.filter(({ startedAt }) => startedAt === at)
      : waits.flatMap(({ name }) => latest(name));
  return [
    ...timers
      .filter(({ doneAt }) => doneAt === at)
      .map((timer): Change => ({ kind: 'timer', put: withOptional(timer, 'doneAt', undefined) })),
    ...begun.map((timer): Change => {
      const name = namesOf(timer).filter((one) => one !== lost);
      return pieces.length > 0 && name.length > 0
        ? { kind: 'timer', put: { ...timer, name: name.join(', ') } as Timer }
        : { kind: 'timer', remove: timer.id };
    }),
  ];
}
