import { useOne } from '../../app/live.ts';
import { boards } from '../../store/boards.ts';
import { BoardDetail } from './board-detail.tsx';
import { Gone } from './gone.tsx';
import { Rack } from './rack.tsx';
import './stock.css';

/** The rack; or one board of it. */
export default function StockScreen({ id }: { id: string }) {
  return id === '' ? <Rack /> : <One id={id} />;
}

function One({ id }: { id: string }) {
  const board = useOne(boards, id);
  if (board === undefined) return null;
  return board ? <BoardDetail board={board} /> : <Gone />;
}
