import { useMemo, useState } from 'preact/hooks';
import type { Board } from '../../store/records/board.ts';
import { Screen } from '../../ui/screen.tsx';
import { BoardEntryFields } from './board-entry.tsx';
import { BoardRow } from './board-row.tsx';
import { DeliveriesList } from './deliveries-list.tsx';
import { LongList } from './long-list.tsx';
import { sumsOf } from './rack-amounts.ts';
import { filterRack, wholeRack } from './rack-filter.ts';
import { RackFilterFields } from './rack-filter-fields.tsx';
import { RackTally } from './rack-tally.tsx';
import { useAmounts } from './use-amounts.ts';
import { useBoardEntry } from './use-board-entry.ts';
import { useRack } from './use-rack.ts';

export function Rack() {
  const all = useRack();
  return all ? <Boards all={all} /> : null;
}

function Boards({ all }: { all: readonly Board[] }) {
  const [filter, setFilter] = useState(wholeRack);
  const amounts = useAmounts(all);
  const woods = useMemo(() => [...new Set(all.map(({ species }) => species).reverse())], [all]);
  const shown = useMemo(() => filterRack(all, filter), [all, filter]);
  const sums = useMemo(() => amounts && sumsOf(shown, amounts), [shown, amounts]);
  const entry = useBoardEntry(all, woods);
  // The same element again is passed over: a key pressed in the entries doesn't draw the list anew.
  const list = useMemo(() => <BoardList boards={shown} />, [shown]);
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
        <RackTally
          count={shown.length}
          name={filter === wholeRack ? 'in the rack' : `shown, of ${all.length} logged`}
          sums={sums}
        />
      ) : (
        <p>Boards stand here with their chalk marks as you log them. Measure the first one.</p>
      )}
      <BoardEntryFields entry={entry} last={all.at(-1)} />
      <DeliveriesList />
      {all.length > 0 && <RackFilterFields filter={filter} woods={woods} onChange={setFilter} />}
      {list}
    </Screen>
  );
}

export function BoardList({ boards }: { boards: readonly Board[] }) {
  return (
    <LongList items={boards} label="Boards">
      {(board) => <BoardRow board={board} />}
    </LongList>
  );
}
