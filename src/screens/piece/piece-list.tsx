import { useAll } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { pieces } from '../../store/pieces.ts';
import { partCount } from '../../store/records/part-count.ts';
import { howMany } from '../../ui/how-many.ts';
import { Screen } from '../../ui/screen.tsx';

/** All pieces, the one worked on last on top, finished ones last; for the screen that needs one. */
export function PieceList({ screen = 'piece', kicker = 'Pieces' }: { screen?: string; kicker?: string }) {
  const all = useAll(pieces);
  if (!all) return null;
  const sorted = all.sort(
    (a, b) => Number(a.finishedAt !== undefined) - Number(b.finishedAt !== undefined) || b.updated - a.updated,
  );
  return (
    <Screen
      question="Which piece?"
      kicker={kicker}
      action={
        <a class="button big now" href={routeTo('piece', 'new')}>
          New piece
        </a>
      }
    >
      {sorted.length === 0 && <p>What you make stands here. None is begun yet.</p>}
      <ul class="rows">
        {sorted.map(({ id, name, parts, finishedAt }) => (
          <li>
            <a href={routeTo(screen, id)}>{name}</a>
            <span class="soft small">
              {finishedAt === undefined ? howMany(partCount({ parts }), 'part') : 'finished'}
            </span>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
