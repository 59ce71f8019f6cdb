import { offerUndo } from '../../app/notices.ts';
import { go, routeTo } from '../../app/routes.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { removePiece } from '../../store/remove-piece.ts';
import { Button } from '../../ui/button.tsx';
import { SettledText } from './settled-text.tsx';

/** The piece as a whole: its name, whether it is finished, and the way to be rid of it. */
export function ThisPiece({ piece }: { piece: Piece }) {
  // A write that fails is kept and shown by the shell.
  const edit = (change: (now: Piece) => Piece) => void pieces.change(piece.id, change).catch(() => {});
  const remove = async () => {
    try {
      const undo = await removePiece(piece.id);
      go('bench');
      offerUndo(`${piece.name} is gone, with its plans, runs and timers.`, undo);
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };
  return (
    <section class="card" aria-label="This piece">
      <h2>This piece</h2>
      <SettledText
        label="Name of the piece"
        value={piece.name}
        onAccept={(name) => edit((now) => ({ ...now, name }))}
      />
      {piece.finishedAt !== undefined && <p>Finished on {new Date(piece.finishedAt).toLocaleDateString()}.</p>}
      <div class="buttons">
        {piece.finishedAt === undefined ? (
          <Button onClick={() => edit((now) => ({ ...now, finishedAt: Date.now() }))}>It is finished</Button>
        ) : (
          <Button onClick={() => edit(({ finishedAt: _, ...now }) => now)}>Not finished after all</Button>
        )}
        <a class="button" href={routeTo('piece')}>
          Other pieces
        </a>
        <Button onClick={remove}>Delete the piece</Button>
      </div>
    </section>
  );
}
