import type { Change } from '../../store/commit.ts';
import { freshRecord } from '../../store/records/fresh-record.ts';
import type { Timer } from '../../store/records/timer.ts';
import { withTicks } from '../../store/records/with-ticks.ts';
import { writeFrom } from '../../store/write.ts';
import type { Did, TicksEdit } from '../../ui/steps/step-flow.tsx';
import { overBy, timersOf, waitsTakenBack } from './coat-timers.ts';
import type { KeptStep } from './finish-steps.ts';

/**
 * Stores what a tap did to a step of a finish, with the waits that begin or end by it, in one transaction. What is ticked
 * already begins no wait again.
 */
export function storeTick(
  finishId: string,
  step: KeptStep,
  edit: TicksEdit,
  did: Did,
  pieceName: string,
  now: number,
): Promise<unknown> {
  return writeFrom(
    ['finish', 'timer'],
    async (stored) => {
      const finish = await stored.get('finish', finishId);
      const ticks = finish && edit(finish.ticks, now);
      if (!ticks || ticks === finish.ticks) return [];
      const running = await stored.where('timer', 'for.id', finishId);
      const changes: Change[] = [{ kind: 'finish', put: withTicks(finish, ticks, now) }];
      const put = (timer: Timer) => changes.push({ kind: 'timer', put: timer });
      if (did === 'back') {
        changes.push(...waitsTakenBack(running, step, finish.ticks[step.id], ticks[step.id]));
      } else if (did !== 'skip') {
        const names = step.pieces.filter(({ id }) => did.done.includes(id)).map(({ label }) => label);
        const name = names.join(', ') || pieceName;
        for (const fields of timersOf(finishId, step.waits, name, now)) put(freshRecord<Timer>(fields, now));
        for (const timer of overBy(running, finish, step, did.done, now)) put({ ...timer, doneAt: now });
      }
      return changes;
    },
    now,
  );
}
