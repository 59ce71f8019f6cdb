import { useLive } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { timers } from '../../store/timers.ts';
import { TimeLeft } from '../../ui/time-left.tsx';

/** The other glue-ups that wait for something, so that one is not forgotten over another. */
export function AlsoRunning({ but, now }: { but: string; now: number }) {
  const all = useLive(['timer'], () => timers.all()) ?? [];
  const others = all
    .filter(({ doneAt, for: of }) => doneAt === undefined && of.kind === 'glueup' && of.id !== but)
    .sort((a, b) => a.endsAt - b.endsAt);
  if (others.length === 0) return null;
  return (
    <section aria-label="Also running">
      <h2>Also running</h2>
      <ul class="starts">
        {others.map(({ name, phase, endsAt, for: of }) => (
          <li>
            <a class={endsAt > now ? 'answer wait next' : 'answer now next'} href={routeTo('glue', of.id)}>
              <span class="soft">
                {name} · {phase}
              </span>
              <TimeLeft left={Math.round((endsAt - now) / 1000)} />
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
