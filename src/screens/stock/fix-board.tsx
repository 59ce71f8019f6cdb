import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { Button } from '../../ui/button.tsx';
import { SettledText } from '../../ui/settled.tsx';
import { freeMark, plainMark } from './board-form.ts';
import { BoardSizes } from './board-sizes.tsx';
import { removeBoard } from './remove-board.ts';

interface Props {
  board: Board;
  isTaken(mark: string): boolean;
  onDone(): void;
}

/** Puts a board right that was just logged, while the next one waits half-typed. */
export const FixBoard = ({ board, isTaken, onDone }: Props) => (
  <BoardSizes board={board} title={`Fix ${board.chalk}`}>
    <SettledText
      label="Chalk mark"
      value={board.chalk}
      check={(mark) => freeMark(mark, (one) => plainMark(one) !== plainMark(board.chalk) && isTaken(one))}
      onAccept={(chalk) => boards.edit(board.id, (now) => ({ ...now, chalk }))}
    />
    <div class="buttons">
      <Button onClick={onDone}>Done</Button>
      <Button onClick={() => removeBoard(board)}>Delete {board.chalk}</Button>
    </div>
  </BoardSizes>
);
