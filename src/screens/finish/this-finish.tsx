import { removeRun } from '../../app/remove-run.ts';
import { routeTo } from '../../app/routes.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';

interface Props {
  finish: Finish;
  piece: Piece | undefined;
  onAgain(): void;
}

/** The finish as a whole: what comes after its last step, and the way to start over. */
export function ThisFinish({ finish, piece, onAgain }: Props) {
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
      <Button look="plain" onClick={() => removeRun('finish', finish.id, 'Schedule deleted.')}>
        Delete the schedule
      </Button>
    </>
  );
}
