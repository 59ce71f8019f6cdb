import { useLive } from '../../app/live.ts';
import { boards } from '../../store/boards.ts';
import { readInPages } from '../../store/read-in-pages.ts';
import type { Board } from '../../store/records/board.ts';
import { SettledText } from '../../ui/settled.tsx';
import { freeMark, plainMark } from './board-form.ts';

/** The mark on a board's end, which no other board has; kept as it is typed. */
export function ChalkMarkEntry({ board }: { board: Board }) {
  // In no order: of thousands, none has to be sorted for this.
  const all = useLive(['board'], () => readInPages('board')) ?? [];
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
