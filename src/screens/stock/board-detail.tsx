import { go, routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { BoardSizes } from './board-sizes.tsx';
import { removeBoard } from './remove-board.ts';

/** Everything about one board. */
export function BoardDetail({ board }: { board: Board }) {
  const sums = tally([board]);
  const only = isProblem(sums) ? undefined : sums.boards[0];
  return (
    <Screen
      question={`What is in board ${board.chalk}?`}
      kicker="Stock"
      action={
        <a class="button big now" href={routeTo('stock')}>
          To the rack
        </a>
      }
    >
      {only && (
        <section class="answer" aria-label="Tally">
          <span class="figure">
            <Amount of={boardFeet(only.boardFeet.value)} />
          </span>
          <span class="soft">
            by the hardwood rule; exactly <Amount of={boardFeet(only.exact.boardFeet.value)} />,{' '}
            <Amount of={m3(only.exact.cubicMetres.value)} />
          </span>
          <div class="workings">
            <ShowWorking of={only.boardFeet.working} label="By the rule" />
            <ShowWorking of={only.exact.boardFeet.working} label="Exact board feet" />
            <ShowWorking of={only.exact.cubicMetres.working} label="Cubic metres" />
          </div>
        </section>
      )}
      <BoardSizes board={board} />
      <div class="buttons">
        <button
          type="button"
          class="button"
          onClick={() => {
            void removeBoard(board);
            go('stock');
          }}
        >
          Delete {board.chalk}
        </button>
      </div>
    </Screen>
  );
}
