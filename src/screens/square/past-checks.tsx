import { useLive } from '../../app/live.ts';
import { offerUndo } from '../../app/notices.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { squareness } from '../../core/square/squareness.ts';
import type { Square } from '../../store/records/square.ts';
import { squares } from '../../store/squares.ts';
import { Say } from '../../ui/say.tsx';
import { measuredOf } from './measured-of.ts';

/** Checks kept with the piece (or with none), the latest first: before and after. */
export function PastChecks({ pieceId }: { pieceId: string }) {
  const kept = useLive(
    ['square'],
    async () => (pieceId ? squares.where('pieceId', pieceId) : (await squares.all()).filter((check) => !check.pieceId)),
    pieceId,
  );
  if (!kept || kept.length === 0) return null;
  return (
    <section>
      <h2>Checks kept</h2>
      <ul class="rows">
        {[...kept]
          .sort((a, b) => b.at - a.at)
          .map((check) => (
            <li key={check.id}>
              <span>
                <span class="soft small">{new Date(check.at).toLocaleString()}</span>
                <br />
                <Outcome check={check} />
              </span>
              <button
                type="button"
                class="button"
                onClick={async () => {
                  const { undo } = await squares.remove(check.id);
                  offerUndo('Check deleted.', undo);
                }}
              >
                Delete
              </button>
            </li>
          ))}
      </ul>
    </section>
  );
}

function Outcome({ check }: { check: Square }) {
  const answer = squareness(measuredOf(check), check.precision);
  return <Say phrase={isProblem(answer) ? answer.message : answer.value.say} />;
}
