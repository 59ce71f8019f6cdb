import { CalendarButton } from '../../app/calendar-button.tsx';
import { useNow } from '../../app/now.ts';
import { useWakeLock } from '../../app/wake-lock.ts';
import type { CalendarTimer } from '../../core/calendar/calendar-file.ts';
import type { Timer } from '../../store/records/timer.ts';
import { timers as kept } from '../../store/timers.ts';
import { Button } from '../../ui/button.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { TimeLeft } from '../../ui/time-left.tsx';
import type { KeptStep } from './finish-steps.ts';
import { latestOf } from './latest-of.ts';

interface Props {
  timers: readonly Timer[];
  steps: readonly KeptStep[];
}

const shortWait = 60 * 60_000;

/** The waits that run for this finish, the one that ends first on top. */
export function FinishTimers({ timers, steps }: Props) {
  const running = timers.filter(({ doneAt }) => doneAt === undefined).sort((a, b) => a.endsAt - b.endsAt);
  return running.length === 0 ? null : <Running timers={running} steps={steps} />;
}

function Running({ timers, steps }: Props) {
  const now = useNow();
  const later = timers.filter(({ endsAt }) => endsAt > now);
  useWakeLock(later.some(({ endsAt }) => endsAt - now < shortWait));
  return (
    <section class="waits" aria-label="Waits">
      {timers.map((timer) => {
        const left = Math.round((timer.endsAt - now) / 1000);
        const latest = latestOf(timer, steps);
        return (
          <div key={timer.id} class={left > 0 ? 'answer wait' : 'answer now'}>
            <span class="soft">
              {timer.phase} · {timer.name}
            </span>
            <TimeLeft left={left} />
            <span class="soft small">
              {clockTime(timer.endsAt, now)}
              {latest !== undefined && `, at the latest ${clockTime(latest, now)}`}
            </span>
            <Button onClick={() => end(timer)}>{left > 0 ? 'End the wait' : 'Seen to'}</Button>
          </div>
        );
      })}
      <CalendarButton of={later.map(inCalendar)} />
    </section>
  );
}

const end = ({ id }: Timer) => kept.edit(id, (timer) => ({ ...timer, doneAt: Date.now() }));

const inCalendar = ({ id, phase, name, endsAt, revision }: Timer): CalendarTimer => ({
  uid: `${id}@boardwright`,
  title: `${phase}: ${name}`,
  endsAt,
  sequence: revision,
});
