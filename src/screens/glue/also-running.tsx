import { useLive } from '../../app/live.ts';
import { timers } from '../../store/timers.ts';
import { RunningTimers } from '../bench/running-timers.tsx';

/** The other glue-ups that wait for something, so that one is not forgotten over another. */
export function AlsoRunning({ but }: { but: string }) {
  const all = useLive(['timer'], () => timers.all()) ?? [];
  const others = all.filter(({ doneAt, for: of }) => doneAt === undefined && of.kind === 'glueup' && of.id !== but);
  if (others.length === 0) return null;
  return (
    <section aria-label="Also running">
      <h2>Also running</h2>
      <RunningTimers timers={others} />
    </section>
  );
}
