import { useLive } from '../../app/live.ts';
import { go, routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { boardFeetByRule } from '../../core/lumber/board-feet.ts';
import { exactVolume } from '../../core/lumber/exact-volume.ts';
import { tally } from '../../core/lumber/tally.ts';
import { boards } from '../../store/boards.ts';
import { deliveries } from '../../store/deliveries.ts';
import type { Board } from '../../store/records/board.ts';
import { Button } from '../../ui/button.tsx';
import { BoardCost } from './board-cost.tsx';
import { BoardLife } from './board-life.tsx';
import { inLoggedOrder } from './board-order.ts';
import { BoardSizes } from './board-sizes.tsx';
import { BoardThickness } from './board-thickness.tsx';
import { BoardWarp } from './board-warp.tsx';
import { BoardWeight } from './board-weight.tsx';
import { Defects } from './defects.tsx';
import { Moisture } from './moisture.tsx';
import { RackTally } from './rack-tally.tsx';
import { removeBoard } from './remove-board.ts';
import { StockPart } from './stock-part.tsx';

/** A board's delivery with the boards that came with it; nothing when it came by itself. */
async function readCompany({ deliveryId }: Board) {
  if (deliveryId === undefined) return {};
  return { delivery: await deliveries.get(deliveryId), came: await boards.where('deliveryId', deliveryId) };
}

/** Everything about one board. */
export function BoardDetail({ board }: { board: Board }) {
  const company = useLive(['board', 'delivery'], () => readCompany(board), board.deliveryId);
  if (!company) return null;
  const { delivery, came = [board] } = company;
  const tallied = tally(inLoggedOrder(came)).boards.find(({ board: { id } }) => id === board.id);
  const byRule = boardFeetByRule(board, tallied?.halfGoes);
  const exact = exactVolume(board);
  return (
    <StockPart question={`What is in board ${board.chalk}?`}>
      {!isProblem(byRule) && !isProblem(exact) && (
        <RackTally sums={{ boardFeet: byRule, exactBoardFeet: exact.boardFeet, cubicMetres: exact.cubicMetres }} />
      )}
      <Moisture board={board} />
      <BoardLife board={board} />
      <Defects board={board} />
      <BoardWarp board={board} />
      <BoardThickness board={board} />
      <BoardCost board={board} came={came} delivery={delivery} />
      <BoardWeight board={board} />
      <BoardSizes board={board} />
      <div class="buttons">
        {delivery && (
          <a class="button" href={routeTo('stock', delivery.id)}>
            Its delivery
          </a>
        )}
        <Button
          onClick={() => {
            go('stock');
            void removeBoard(board);
          }}
        >
          Delete {board.chalk}
        </Button>
      </div>
    </StockPart>
  );
}
