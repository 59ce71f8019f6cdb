import { useAll } from '../../app/live.ts';
import { boards } from '../../store/boards.ts';
import type { Board } from '../../store/records/board.ts';
import { Screen } from '../../ui/screen.tsx';
import { BoardEntryFields } from './board-entry.tsx';
import { inLoggedOrder } from './board-order.ts';
import { BoardRow } from './board-row.tsx';
import { DeliveriesList } from './deliveries-list.tsx';
import { RackTally } from './rack-tally.tsx';
import { useBoardEntry } from './use-board-entry.ts';

export function Rack() {
  const all = useAll(boards);
  return all ? <Boards all={inLoggedOrder(all)} /> : null;
}

function Boards({ all }: { all: readonly Board[] }) {
  const common = [...new Set(all.map(({ species }) => species).reverse())];
  const entry = useBoardEntry(all, common);
  return (
    <Screen
      question="What is in the rack?"
      kicker="Stock"
      action={
        <button type="button" class="button big now" onClick={() => void entry.log()}>
          {entry.form?.fixing ? 'Put right' : 'Log board'}
        </button>
      }
    >
      {all.length > 0 ? (
        <RackTally boards={all} name="logged" />
      ) : (
        <p>Boards stand here with their chalk marks as you log them. Measure the first one.</p>
      )}
      <BoardEntryFields entry={entry} last={all.at(-1)} />
      <DeliveriesList />
      <ul>
        {all.toReversed().map((board) => (
          <li key={board.id}>
            <BoardRow board={board} />
          </li>
        ))}
      </ul>
    </Screen>
  );
}
