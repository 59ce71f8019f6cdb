import { CalendarButton } from '../../app/calendar-button.tsx';
import { useFlow } from '../../app/flow.ts';
import { notify, offerUndo } from '../../app/notices.ts';
import { useNow } from '../../app/now.ts';
import { routeTo } from '../../app/routes.ts';
import { useWakeLock } from '../../app/wake-lock.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { isHurry } from '../../core/gluing/adhesive.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { Button } from '../../ui/button.tsx';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { AlsoRunning } from './also-running.tsx';
import { calendarTimers } from './calendar-timers.ts';
import { ClockJumpNote } from './clock-jump-note.tsx';
import { glueEvents, phaseOf, runOf, stepOf } from './glue-events.ts';
import { PhaseList } from './phase-list.tsx';
import { PhaseNow } from './phase-now.tsx';
import { RunLog } from './run-log.tsx';
import { Stale, storeEvent } from './write-glue-up.ts';

type Told = (typeof glueEvents)[number];

/** One glue-up while it runs: how long is left, large, and the one thing to say next. */
export function RunScreen({ glueup }: { glueup: Glueup }) {
  const now = useNow();
  const step = stepOf(glueup);
  useFlow(step < 2);
  useWakeLock(step < 2);
  const run = runOf(glueup);
  const at = phaseOf(glueup, now);
  const next = glueEvents[step];

  const tell = async ({ event, label }: Told) => {
    try {
      const undo = await storeEvent(glueup, event, Date.now());
      offerUndo(`${label}: noted.`, undo);
    } catch (error) {
      // Told already: what is stored comes up by itself. A failed write is kept and shown by the shell.
      if (error instanceof Stale) notify('Noted already.');
    }
  };
  const button = (told: Told, now: boolean) => (
    <Button look={now ? 'big now' : 'big'} onClick={() => tell(told)}>
      {told.label}
    </Button>
  );
  const early = !isProblem(at) && at.phase && !isHurry(at.phase.id) && now < at.phase.other;

  return (
    <Screen
      question={glueup.name}
      kicker="Glue-up"
      action={
        next ? (
          button(next, !early)
        ) : (
          <a class="button big now" href={routeTo('glue', glueup.pieceId ?? '')}>
            What next?
          </a>
        )
      }
    >
      <ClockJumpNote />
      {isProblem(at) ? (
        <div class="answer now" role="alert">
          <p class="figure words">Look at the clock</p>
          <p>
            <Say phrase={at.message} />
          </p>
        </div>
      ) : (
        <PhaseNow glueup={glueup} at={at} now={now} />
      )}
      {step === 0 && glueEvents[1] && button(glueEvents[1], false)}
      {!isProblem(run) && <PhaseList phases={run.phases} now={now} glueup={glueup} />}
      <CalendarButton of={calendarTimers(glueup, now)} />
      <AlsoRunning but={glueup.id} now={now} />
      <RunLog glueup={glueup} now={now} />
    </Screen>
  );
}
