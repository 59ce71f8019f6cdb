import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { SettledText } from '../../ui/settled.tsx';
import { freeMark, plainMark } from './board-form.ts';
import { useRack } from './use-rack.ts';

/** The mark on a board's end, which no other board has; kept as it is typed. */
export function ChalkMarkEntry({ board }: { board: Board }) {
  const all = useRack() ?? [];
  const isTaken = (mark: string) =>
    all.some(({ id, chalk }) => id !== board.id && plainMark(chalk) === plainMark(mark));
  return (
    <SettledText
      label="Chalk mark"
      value={board.chalk}
      check={(mark) => freeMark(mark, isTaken)}
      onAccept={(chalk) => boards.edit(board.id, (now) => ({ ...now, chalk }))}
    />
  );
}
