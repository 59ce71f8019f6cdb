import { useLive } from '../../app/live.ts';
import { boards } from '../../store/boards.ts';
import { deliveries } from '../../store/deliveries.ts';
import { BoardDetail } from './board-detail.tsx';
import { DeliveryScreen } from './delivery.tsx';
import { RackFiles } from './files/rack-files.tsx';
import { Rack } from './rack.tsx';
import { ShopAir } from './shop-air.tsx';
import './stock.css';

/** The rack; its list out and in; the air it stands in; or one board of it, or one delivery. */
export default function StockScreen({ id }: { id: string }) {
  if (id === '') return <Rack />;
  if (id === 'list') return <RackFiles />;
  return id === 'air' ? <ShopAir /> : <One id={id} />;
}

function One({ id }: { id: string }) {
  const found = useLive(['board', 'delivery'], async () => ({
    board: await boards.get(id),
    delivery: await deliveries.get(id),
  }));
  if (!found) return null;
  if (found.board) return <BoardDetail board={found.board} />;
  // What was deleted, here or in another tab, leads to the rack.
  return found.delivery ? <DeliveryScreen delivery={found.delivery} /> : <Rack />;
}
