import { useLive } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { seconds } from '../../core/answer/quantity.ts';
import { timers } from '../../store/timers.ts';
import { Amount } from '../../ui/amount.tsx';

/** The other glue-ups that wait for something, so that one is not forgotten over another. */
export function AlsoRunning({ but, now }: { but: string; now: number }) {
  const all = useLive(['timer'], () => timers.all()) ?? [];
  const others = all
    .filter((timer) => timer.doneAt === undefined && timer.for.kind === 'glueup' && timer.for.id !== but)
    .sort((a, b) => a.endsAt - b.endsAt);
  if (others.length === 0) return null;
  return (
    <section aria-label="Also running">
      <h2>Also running</h2>
      <ul class="rows">
        {others.map((timer) => {
          const left = Math.round((timer.endsAt - now) / 1000);
          return (
            <li>
              <a href={routeTo('glue', timer.for.id)}>
                {timer.name} · {timer.phase}
              </a>
              <span>
                {left > 0 ? (
                  <>
                    <Amount of={seconds(left)} /> left
                  </>
                ) : (
                  <>
                    ended <Amount of={seconds(-left)} /> ago
                  </>
                )}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
