import { undoable } from '../../app/notices.ts';
import { go, routeTo } from '../../app/routes.ts';
import { partName } from '../../core/lumber/check-part.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { removePiece } from '../../store/remove-piece.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { day } from '../../ui/day.ts';
import { SettledText } from '../../ui/settled.tsx';

/** The piece as a whole: its name, whether it is finished, and the way to be rid of it. */
export function ThisPiece({ piece }: { piece: Piece }) {
  const edit = (change: (now: Piece) => Piece) => pieces.edit(piece.id, change);
  const { finishedAt } = piece;
  const remove = () => {
    go('bench');
    void undoable(removePiece(piece.id), `${piece.name} deleted, with its plans and runs.`);
  };
  return (
    <Card title="This piece">
      <SettledText
        label="Name of the piece"
        value={piece.name}
        check={partName}
        onAccept={(name) => edit((now) => ({ ...now, name }))}
      />
      {finishedAt && <p>Finished on {day(finishedAt)}.</p>}
      <div class="buttons">
        <Button onClick={() => edit((now) => withOptional(now, 'finishedAt', finishedAt ? undefined : Date.now()))}>
          {finishedAt ? 'Not finished after all' : 'It is finished'}
        </Button>
        <a class="button" href={routeTo('piece')}>
          Other pieces
        </a>
        <Button onClick={remove}>Delete the piece</Button>
      </div>
    </Card>
  );
}
