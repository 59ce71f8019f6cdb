import { useAll } from '../../app/live.ts';
import { glueups } from '../../store/glueups.ts';
import { RunningList, runningOf } from './running-list.tsx';

/** The other glue-ups that wait for something, so that one is not forgotten over another. */
export function AlsoRunning({ but, now }: { but: string; now: number }) {
  const all = useAll(glueups) ?? [];
  const others = runningOf(
    all.filter(({ id }) => id !== but),
    now,
  );
  return (
    others.length > 0 && (
      <section aria-label="Also running">
        <h2>Also running</h2>
        <RunningList of={others} />
      </section>
    )
  );
}
