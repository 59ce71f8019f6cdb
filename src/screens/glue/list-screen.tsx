import { useAll } from '../../app/live.ts';
import { useNow } from '../../app/now.ts';
import { routeTo } from '../../app/routes.ts';
import { glueups } from '../../store/glueups.ts';
import { pieces } from '../../store/pieces.ts';
import { clockTime } from '../../ui/clock-time.ts';
import { Screen } from '../../ui/screen.tsx';
import { ClockJumpNote } from './clock-jump-note.tsx';
import { RunningList, runningOf } from './running-list.tsx';

/** What is in the glue now, and every glue-up kept. */
export function ListScreen() {
  const all = useAll(glueups);
  const allPieces = useAll(pieces);
  const now = useNow();
  if (!all || !allPieces) return null;
  const running = runningOf(all, now);
  const kept = all.filter((one) => !running.some(({ glueup }) => glueup === one)).sort((a, b) => b.created - a.created);
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
      <RunningList of={running} />
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
