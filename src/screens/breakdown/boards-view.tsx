import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Button } from '../../ui/button.tsx';
import { howMany } from '../../ui/how-many.ts';
import { BoardCard } from './board-card.tsx';
import { boardSheets } from './board-sheet.ts';
import type { Names } from './names.ts';
import { setAside } from './store-plan.ts';

interface Props {
  asked: BreakdownProblem;
  plan: Plan;
  piece: Piece;
  rack: readonly Board[];
  names: Names;
}

/** Board by board, to be cut at the bench. */
export function BoardsView(props: Props) {
  const { asked, plan, piece, rack } = props;
  const sheets = boardSheets(asked, plan);
  const stored = (id: string) => rack.find((board) => board.id === id);
  const free = sheets.flatMap(({ board }) => stored(board.id) ?? []).filter(({ state }) => state === 'rack');
  return (
    <>
      <p class="soft small">
        Mark the whole board out from the chalked end before the first cut. Milling says what to flatten and straighten
        before a rip.
      </p>
      {free.length > 0 && (
        <Button onClick={() => setAside(free, piece)}>
          Set {howMany(free.length, 'board')} aside for {piece.name}
        </Button>
      )}
      {sheets.map((sheet) => (
        <BoardCard key={sheet.board.id} stored={stored(sheet.board.id)} sheet={sheet} {...props} />
      ))}
    </>
  );
}
