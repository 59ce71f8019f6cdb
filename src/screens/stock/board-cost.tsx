import { shop } from '../../app/shop.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { money } from '../../core/answer/quantity.ts';
import { boardCost } from '../../core/lumber/board-cost.ts';
import { cubicMetresPerBoardFoot } from '../../core/lumber/exact-volume.ts';
import type { Tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import { OptionalNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { changeBoard } from './change-board.ts';
import { pricedUnit } from './priced-unit.ts';
import { usableBoardFeet } from './usable-board-feet.ts';

interface Props {
  board: Board;
  /** Its place in the tally of its delivery. */
  at: number;
  sums: Tally;
  delivery: Delivery | undefined;
}

/** What a board cost with its share of the freight, and what one usable board foot of it cost. */
export function BoardCost({ board, at, sums, delivery }: Props) {
  const own = sums.boards[at];
  if (!own) return null;
  if (!delivery) {
    return (
      <section class="card" aria-label="Cost">
        <h2>Cost</h2>
        <OptionalNumber
          label="What it cost"
          value={board.cost}
          check={(value) => badNumber('', 'The cost', value, 'money', { least: 0, most: 1e6 })}
          onAccept={(cost) =>
            changeBoard(board.id, ({ cost: _, ...now }) => (cost === undefined ? now : { ...now, cost }))
          }
        />
      </section>
    );
  }
  const usable = usableBoardFeet(board, shop.value.strips.min);
  const byVolume = pricedUnit(delivery) === 'm3';
  const found = boardCost({
    boardFeet: byVolume ? own.exact.boardFeet.value : own.boardFeet.value,
    deliveryBoardFeet: byVolume ? sums.exactBoardFeet.value : sums.boardFeet.value,
    pricePerBoardFoot: delivery.price.amount * (byVolume ? cubicMetresPerBoardFoot : 1),
    freight: delivery.freight,
    ...(usable > 0 && { usableBoardFeet: usable }),
  });
  return (
    <section class="card" aria-label="Cost">
      <h2>Cost</h2>
      {isProblem(found) ? (
        <p class="soft">
          <Say phrase={found.message} />
        </p>
      ) : (
        <>
          <dl class="facts">
            <dt>This board, with its share of the freight</dt>
            <dd>
              <Amount of={money(found.cost.value)} />
            </dd>
            {found.perUsableBoardFoot && (
              <>
                <dt>Per usable board foot</dt>
                <dd>
                  <Amount of={money(found.perUsableBoardFoot.value)} />
                </dd>
              </>
            )}
          </dl>
          <ShowWorking of={(found.perUsableBoardFoot ?? found.cost).working} />
        </>
      )}
    </section>
  );
}
