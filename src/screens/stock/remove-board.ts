import { undoable } from '../../app/notices.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';

export const removeBoard = ({ id, chalk }: Board): Promise<void> => undoable(boards.remove(id), `${chalk} deleted.`);
