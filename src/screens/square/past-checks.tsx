import { useMemo } from 'preact/hooks';
import { useLive } from '../../app/live.ts';
import { undoable } from '../../app/notices.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { squareness } from '../../core/square/squareness.ts';
import type { Square } from '../../store/records/square.ts';
import { squares } from '../../store/squares.ts';
import { Button } from '../../ui/button.tsx';
import { Say } from '../../ui/say.tsx';

/** Checks kept with the piece (or with none), the latest first: before and after. */
export function PastChecks({ pieceId }: { pieceId: string }) {
  const kept = useLive(
    ['square'],
    async () => (pieceId ? squares.where('pieceId', pieceId) : (await squares.all()).filter((check) => !check.pieceId)),
    pieceId,
  );
  if (!kept || kept.length === 0) return null;
  const latestFirst = [...kept].sort((a, b) => b.at - a.at);
  const mark = (n: number) =>
    kept.length === 1 ? '' : n === 0 ? 'After · ' : n === kept.length - 1 ? 'Before · ' : '';
  return (
    <section aria-label="Checks kept">
      <h2>Checks kept</h2>
      <ul class="rows">
        {latestFirst.map((check, n) => (
          <li key={check.id}>
            <span>
              <span class="soft small">
                {mark(n)}
                {new Date(check.at).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' })}
              </span>
              <br />
              <Outcome check={check} />
            </span>
            <Button
              label={`Delete check ${kept.length - n}`}
              onClick={() => undoable(squares.remove(check.id), 'Check deleted.')}
            >
              Delete
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Outcome({ check }: { check: Square }) {
  const answer = useMemo(() => squareness(check, check.precision), [check]);
  return <Say phrase={isProblem(answer) ? answer.message : answer.value.say} />;
}
