import type { Board } from '../../store/records/board.ts';
import { Button } from '../../ui/button.tsx';
import { BoardSizes } from './board-sizes.tsx';
import { removeBoard } from './remove-board.ts';

interface Props {
  board: Board;
  onDone(): void;
}

/** Puts a board right that was just logged, while the next one waits half-typed. */
export const FixBoard = ({ board, onDone }: Props) => (
  <BoardSizes board={board} title={`Fix ${board.chalk}`}>
    <div class="buttons">
      <Button onClick={onDone}>Done</Button>
      <Button onClick={() => removeBoard(board)}>Delete {board.chalk}</Button>
    </div>
  </BoardSizes>
);
