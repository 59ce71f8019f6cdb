import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import type { Delivery } from '../../store/records/delivery.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Card } from '../../ui/card.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Reason } from '../../ui/reason.tsx';
import { OptionalNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { costInDelivery } from './cost-in-delivery.ts';
import { usableBoardFeet } from './usable-board-feet.ts';

interface Props {
  board: Board;
  /** All boards of its delivery. */
  came: readonly Board[];
  delivery: Delivery | undefined;
}

/** What a board cost with its share of the freight, and what one usable board foot of it cost. */
export function BoardCost({ board, came, delivery }: Props) {
  return (
    <Card title="Cost">
      {delivery ? (
        <ByDelivery board={board} came={came} delivery={delivery} />
      ) : (
        <OptionalNumber
          label="What it cost"
          value={board.cost}
          unit="money"
          limits={{ least: 0, most: 1e6 }}
          onAccept={(cost) => boards.edit(board.id, (now) => withOptional(now, 'cost', cost))}
        />
      )}
    </Card>
  );
}

function ByDelivery({ board, came, delivery }: Props & { delivery: Delivery }) {
  const found = costInDelivery(board.id, came, delivery, usableBoardFeet(board, shop.value.strips.min));
  if (isProblem(found)) return <Reason of={found} />;
  const { cost, perUsableBoardFoot } = found;
  return (
    <>
      <Facts
        rows={[
          ['With its share of the freight', resultOf(cost)],
          ...(perUsableBoardFoot ? [['Per usable board foot', resultOf(perUsableBoardFoot)] as const] : []),
        ]}
      />
      <ShowWorking of={(perUsableBoardFoot ?? cost).working} />
    </>
  );
}
