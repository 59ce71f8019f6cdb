import { useAll } from '../../app/live.ts';
import { useNow } from '../../app/now.ts';
import { routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { glueups } from '../../store/glueups.ts';
import { pieces } from '../../store/pieces.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { clockTime } from '../../ui/clock-time.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ClockJumpNote } from './clock-jump-note.tsx';
import { phaseOf } from './glue-events.ts';

/** Whether anything is still waited for; what can't be told is looked at. */
function isRunning(glueup: Glueup, now: number): boolean {
  const at = phaseOf(glueup, now);
  return glueup.restedAt === undefined || isProblem(at) || (at.phase !== undefined && at.overdueSeconds === 0);
}

/** When the next is due; what can't be told comes first. */
function dueAt(glueup: Glueup, now: number): number {
  const at = phaseOf(glueup, now);
  return isProblem(at) ? 0 : (at.phase?.until ?? Number.POSITIVE_INFINITY);
}

/** What is in the glue now, and every glue-up kept. */
export function ListScreen() {
  const all = useAll(glueups);
  const allPieces = useAll(pieces);
  const now = useNow();
  if (!all || !allPieces) return null;
  const running = all.filter((one) => isRunning(one, now)).sort((a, b) => dueAt(a, now) - dueAt(b, now));
  const kept = all.filter((one) => !running.includes(one)).sort((a, b) => b.created - a.created);
  return (
    <Screen
      question="What is in the glue?"
      kicker="Glue-up"
      action={
        <a class="button big now" href={routeTo('glue', 'new')}>
          New glue-up
        </a>
      }
    >
      <ClockJumpNote />
      {running.length === 0 && (
        <p class="answer">
          <span class="figure words">Nothing</span>
          <span>Glue-ups run here, from the first glue to full strength.</span>
        </p>
      )}
      <ul class="starts">
        {running.map((glueup) => (
          <Running glueup={glueup} now={now} />
        ))}
      </ul>
      {allPieces.length > 0 && (
        <>
          <h2>Next for a piece</h2>
          <div class="buttons">
            <a class="button" href={routeTo('glue', 'plan')}>
              All pieces, by the clock
            </a>
            {allPieces
              .filter(({ finishedAt }) => finishedAt === undefined)
              .map(({ id, name }) => (
                <a class="button" href={routeTo('glue', id)}>
                  {name}
                </a>
              ))}
          </div>
        </>
      )}
      {kept.length > 0 && (
        <>
          <h2>Kept</h2>
          <ul class="rows">
            {kept.map(({ id, name, startedAt, created }) => (
              <li>
                <a href={routeTo('glue', id)}>{name}</a>
                <span class="soft small">{clockTime(startedAt ?? created, now)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </Screen>
  );
}

function Running({ glueup, now }: { glueup: Glueup; now: number }) {
  const at = phaseOf(glueup, now);
  const calm = !isProblem(at) && at.phase?.kind === 'wait' && at.overdueSeconds === 0;
  return (
    <li>
      <a class={calm ? 'answer wait next' : 'answer now next'} href={routeTo('glue', glueup.id)}>
        <span class="soft">{glueup.name}</span>
        <span class="figure words">
          <Say phrase={isProblem(at) ? at.message : at.said} />
        </span>
      </a>
    </li>
  );
}
