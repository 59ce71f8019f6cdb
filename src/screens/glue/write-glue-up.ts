import type { Change } from '../../store/commit.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Timer } from '../../store/records/timer.ts';
import { timers } from '../../store/timers.ts';
import { write } from '../../store/write.ts';
import { type GlueEvent, timerOf, withEvent } from './glue-events.ts';

const timerPut = (glueup: Glueup, now: number): Change[] => {
  const put = timerOf(glueup, now);
  return put ? [{ kind: 'timer', put }] : [];
};

/** Stores a glue-up that begins, with its timer. Rejects with `WriteFailed` when the phone didn't take it. */
export async function storeStart(glueup: Glueup): Promise<void> {
  await write([{ kind: 'glueup', put: glueup }, ...timerPut(glueup, glueup.created)]);
}

/** Stores what has happened, ends the timer of the phase before and begins the next. Gives the way back. */
export async function storeEvent(glueup: Glueup, event: GlueEvent, now: number): Promise<() => Promise<void>> {
  const after = withEvent(glueup, event, now);
  const running = (await timers.where('for.id', glueup.id)).filter(({ doneAt }) => doneAt === undefined);
  const started = timerPut(after, now);
  await write([
    { kind: 'glueup', put: after, onto: glueup.revision },
    ...running.map((timer): Change => ({ kind: 'timer', put: { ...timer, doneAt: now } as Timer })),
    ...started,
  ]);
  return async () => {
    await write([
      { kind: 'glueup', put: glueup },
      ...running.map((timer): Change => ({ kind: 'timer', put: timer })),
      ...started.flatMap((change): Change[] => ('put' in change ? [{ kind: 'timer', remove: change.put.id }] : [])),
    ]);
  };
}
