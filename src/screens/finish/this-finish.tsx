import { offerUndo } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Timer } from '../../store/records/timer.ts';
import { remove } from '../../store/remove.ts';
import { Button } from '../../ui/button.tsx';
import { Fold } from '../../ui/fold.tsx';

interface Props {
  finish: Finish;
  piece: Piece | undefined;
  running: readonly Timer[];
  onAgain(): void;
}

/** The finish as a whole: what comes after its last step, and the way to start over. */
export function ThisFinish({ finish, piece, running, onAgain }: Props) {
  const discard = async () => {
    try {
      const { undo } = await remove([
        { kind: 'finish', id: finish.id },
        ...running.map(({ id }) => ({ kind: 'timer' as const, id })),
      ]);
      offerUndo('Schedule deleted.', undo);
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };
  return (
    <>
      {finish.finishedAt !== undefined && (
        <div class="answer">
          <span class="figure words">All steps are through</span>
          <div class="buttons">
            {piece && (
              <a class="button" href={routeTo('piece', piece.id)}>
                {piece.name}
              </a>
            )}
            <Button onClick={onAgain}>Plan another finish</Button>
          </div>
        </div>
      )}
      <Fold label="Start over">
        <p>The plan stays as typed.</p>
        <Button onClick={discard}>Delete the schedule</Button>
      </Fold>
    </>
  );
}
