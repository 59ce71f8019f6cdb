import { useLive } from '../../app/live.ts';
import { boards } from '../../store/boards.ts';
import { deliveries } from '../../store/deliveries.ts';
import { BoardDetail } from './board-detail.tsx';
import { DeliveryScreen } from './delivery.tsx';
import { Gone } from './gone.tsx';
import { Rack } from './rack.tsx';
import './stock.css';

/** The rack; or one board of it, or one delivery. */
export default function StockScreen({ id }: { id: string }) {
  return id === '' ? <Rack /> : <One id={id} />;
}

function One({ id }: { id: string }) {
  const found = useLive(['board', 'delivery'], async () => ({
    board: await boards.get(id),
    delivery: await deliveries.get(id),
  }));
  if (!found) return null;
  if (found.board) return <BoardDetail board={found.board} />;
  return found.delivery ? <DeliveryScreen delivery={found.delivery} /> : <Gone />;
}
