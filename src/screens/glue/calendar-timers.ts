import { isProblem } from '../../core/answer/problem.ts';
import type { CalendarTimer } from '../../core/calendar/calendar-file.ts';
import type { AdhesivePhase } from '../../core/gluing/adhesive.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { runOf } from './glue-events.ts';

const todo: Readonly<Partial<Record<AdhesivePhase, string>>> = {
  clamp: 'Clamps off',
  rest: 'Ready to plane',
  cure: 'Full strength',
};

/** What of a glue-up is worth an alarm in the calendar: the waits that end later. An entry moves when the glue-up does. */
export function calendarTimers(glueup: Glueup, now: number): CalendarTimer[] {
  const run = runOf(glueup);
  if (isProblem(run)) return [];
  return run.phases.flatMap(({ id, over, until }) => {
    const title = todo[id];
    if (!title || over || until <= now) return [];
    return [{ uid: `${glueup.id}-${id}`, title: `${title}: ${glueup.name}`, endsAt: until, sequence: glueup.revision }];
  });
}
