import { useNow } from '../../app/now.ts';
import { routeTo } from '../../app/routes.ts';
import { seconds } from '../../core/answer/quantity.ts';
import type { Timer } from '../../store/records/timer.ts';
import { Amount } from '../../ui/amount.tsx';

/** Which screen shows what a timer runs for. */
const screenOf = { glueup: 'glue', milling: 'mill', finish: 'finish' } as const;

/** The timers that run, the one that ends first on top. */
export function RunningTimers({ timers }: { timers: readonly Timer[] }) {
  if (timers.length === 0) return null;
  return <List timers={timers} />;
}

function List({ timers }: { timers: readonly Timer[] }) {
  const now = useNow();
  const sorted = [...timers].sort((a, b) => a.endsAt - b.endsAt);
  return (
    <ul class="starts">
      {sorted.map((timer) => {
        const left = Math.round((timer.endsAt - now) / 1000);
        const screen = screenOf[timer.for.kind as keyof typeof screenOf] ?? 'glue';
        return (
          <li>
            <a class={left > 0 ? 'answer wait next' : 'answer now next'} href={routeTo(screen, timer.for.id)}>
              <span class="soft">
                {timer.name} · {timer.phase}
              </span>
              <span class="figure words">
                {left > 0 ? (
                  <>
                    <Amount of={seconds(left)} /> left
                  </>
                ) : (
                  <>
                    Ended <Amount of={seconds(-left)} /> ago
                  </>
                )}
              </span>
            </a>
          </li>
        );
      })}
    </ul>
  );
}
