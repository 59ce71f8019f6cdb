import type { StageTimes } from '../../core/gluing/day-plan.ts';

/** Something for the hands to do at an instant, ms since the epoch. */
export interface DayEvent {
  readonly at: number;
  readonly does: 'Glue' | 'Unclamp' | 'Plane';
  readonly name: string;
  readonly id: string;
}

/** What is to be done, in order of time. What runs already is glued no more, and what is off its clamps not unclamped again. */
export function mergeEvents(times: readonly StageTimes[], running: ReadonlySet<string>): DayEvent[] {
  return times
    .flatMap(({ id, name, from, unclampAt, readyAt }): DayEvent[] => [
      ...(running.has(id) ? [] : [{ at: from, does: 'Glue' as const, name, id }]),
      ...(unclampAt < from ? [] : [{ at: unclampAt, does: 'Unclamp' as const, name, id }]),
      { at: readyAt, does: 'Plane' as const, name, id },
    ])
    .sort((a, b) => a.at - b.at);
}
