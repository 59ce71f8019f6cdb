import type { Change } from '../../store/commit.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Timer } from '../../store/records/timer.ts';
import type { WayBack } from '../../store/remove.ts';
import { write, writeFrom } from '../../store/write.ts';
import { type GlueEvent, timerOf, withEvent } from './glue-events.ts';

/** It has been noted already. */
export class Stale extends Error {}

const timerPut = (glueup: Glueup, now: number) => {
  const put = timerOf(glueup, now);
  return put ? [{ kind: 'timer' as const, put }] : [];
};

/** Stores a glue-up that begins, with its timer. Rejects with `WriteFailed` when the phone didn't take it. */
export const storeStart = (glueup: Glueup): Promise<unknown> =>
  write([{ kind: 'glueup', put: glueup }, ...timerPut(glueup, glueup.created)]);

/**
 * Stores what has happened, ends the timer of the phase before and begins the next. Gives the way back. Rejects with
 * `Stale` when it has been noted already, in another tab or by a tap before.
 */
export async function storeEvent({ id }: Glueup, event: GlueEvent, now: number): Promise<WayBack> {
  let back: (latest: Glueup) => Change[] = () => [];
  await writeFrom(['glueup', 'timer'], async (stored) => {
    const before = await stored.get('glueup', id);
    const after = before && withEvent(before, event, now);
    if (!after || after === before) throw new Stale(id);
    const running = (await stored.where('timer', 'for.id', id)).filter(({ doneAt }) => doneAt === undefined);
    const started = timerPut(after, now);
    const told = new Set(after.log?.slice(before.log?.length).map(({ at, text }) => `${at} ${text}`));
    back = ({ log = [] }) => [
      // What the maker has noted in the log since stays.
      { kind: 'glueup', put: { ...before, log: log.filter(({ at, text }) => !told.has(`${at} ${text}`)) } as Glueup },
      ...running.map((timer): Change => ({ kind: 'timer', put: timer })),
      ...started.map(({ put }): Change => ({ kind: 'timer', remove: put.id })),
    ];
    return [
      { kind: 'glueup', put: after },
      ...running.map((timer): Change => ({ kind: 'timer', put: { ...timer, doneAt: now } as Timer })),
      ...started,
    ];
  });
  return () =>
    writeFrom(['glueup', 'timer'], async (stored) => {
      const latest = await stored.get('glueup', id);
      return latest ? back(latest) : [];
    });
}
