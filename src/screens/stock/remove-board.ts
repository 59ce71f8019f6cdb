import { offerUndo } from '../../app/notices.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';

export async function removeBoard(board: Board): Promise<void> {
  try {
    const { undo } = await boards.remove(board.id);
    offerUndo(`${board.chalk} deleted.`, undo);
  } catch {
    // Not stored: the shell keeps the change and shows it.
  }
}
