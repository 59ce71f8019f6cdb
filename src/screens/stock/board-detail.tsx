import { useLive } from '../../app/live.ts';
import { go, routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { tally } from '../../core/lumber/tally.ts';
import { boards } from '../../store/boards.ts';
import { deliveries } from '../../store/deliveries.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { BoardCost } from './board-cost.tsx';
import { BoardLife } from './board-life.tsx';
import { inLoggedOrder } from './board-order.ts';
import { BoardSizes } from './board-sizes.tsx';
import { BoardThickness } from './board-thickness.tsx';
import { BoardWarp } from './board-warp.tsx';
import { BoardWeight } from './board-weight.tsx';
import { Defects } from './defects.tsx';
import { Moisture } from './moisture.tsx';
import { removeBoard } from './remove-board.ts';

/** A board's delivery with the boards that came with it; the board alone when it came by itself. */
async function readCompany({ deliveryId }: Board) {
  if (deliveryId === undefined) return {};
  return { delivery: await deliveries.get(deliveryId), boards: await boards.where('deliveryId', deliveryId) };
}

/** Everything about one board. */
export function BoardDetail({ board }: { board: Board }) {
  const company = useLive(['board', 'delivery'], () => readCompany(board), board.deliveryId);
  if (!company) return null;
  const together = company.boards?.some(({ id }) => id === board.id) ? inLoggedOrder(company.boards) : [board];
  const sums = tally(together);
  const at = together.findIndex(({ id }) => id === board.id);
  const only = isProblem(sums) ? undefined : sums.boards[at];
  return (
    <Screen
      question={`What is in board ${board.chalk}?`}
      kicker="Stock"
      action={
        <a class="button big" href={routeTo('stock')}>
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
      <Moisture board={board} />
      <BoardLife board={board} />
      <Defects board={board} />
      <BoardWarp board={board} />
      <BoardThickness board={board} />
      {!isProblem(sums) && <BoardCost board={board} at={at} sums={sums} delivery={company.delivery} />}
      {only && <BoardWeight board={board} cubicMetres={only.exact.cubicMetres.value} />}
      <BoardSizes board={board} />
      <div class="buttons">
        {board.deliveryId !== undefined && (
          <a class="button" href={routeTo('stock', board.deliveryId)}>
            Its delivery
          </a>
        )}
        <button
          type="button"
          class="button"
          onClick={() => {
            go('stock');
            void removeBoard(board);
          }}
        >
          Delete {board.chalk}
        </button>
      </div>
    </Screen>
  );
}
