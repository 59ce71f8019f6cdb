import { useEffect, useMemo, useState } from 'preact/hooks';
import { type Sums, tally } from '../../core/lumber/tally.ts';
import type { Board } from '../../store/records/board.ts';
import { howMany } from '../../ui/how-many.ts';
import { Screen } from '../../ui/screen.tsx';
import { questions } from '../questions.ts';
import { BoardEntryFields, LogButton } from './board-entry.tsx';
import { BoardRow } from './board-row.tsx';
import { DeliveriesList } from './deliveries-list.tsx';
import { LongList } from './long-list.tsx';
import { filterRack, sortRack, wholeRack } from './rack-filter.ts';
import { RackFilterFields } from './rack-filter-fields.tsx';
import { RackTally } from './rack-tally.tsx';
import { useBoardEntry } from './use-board-entry.ts';
import { useRack } from './use-rack.ts';

export function Rack() {
  const all = useRack();
  return all ? <Boards all={all} /> : null;
}

/** A board is looked at and left again: the list is still as it was searched. */
let lastFilter = wholeRack;

function Boards({ all }: { all: readonly Board[] }) {
  const [filter, setFilter] = useState(lastFilter);
  lastFilter = filter;
  const shown = useMemo(() => filterRack(all, filter), [all, filter]);
  const [sums, setSums] = useState<Sums>();
  // Once the boards are drawn, as a task of its own: adding up thousands doesn't hold them up.
  useEffect(() => {
    const waiting = setTimeout(() => setSums(tally(shown)));
    return () => clearTimeout(waiting);
  }, [shown]);
  const entry = useBoardEntry(all);
  // The same element again is passed over: a key pressed in the entries doesn't draw the list anew.
  const list = useMemo(() => <BoardList boards={sortRack(shown, filter.sort)} />, [shown, filter.sort]);
  return (
    <Screen question={questions.stock} kicker="Stock" action={<LogButton entry={entry} />}>
      {all.length > 0 ? (
        sums && (
          <RackTally
            sums={sums}
            of={`${howMany(shown.length, 'board')} ${filter === wholeRack ? 'in the rack' : `shown, of ${all.length} logged`}`}
          />
        )
      ) : (
        <p>No boards yet. Measure the first one.</p>
      )}
      <BoardEntryFields entry={entry} boards={all} />
      <DeliveriesList />
      {all.length > 0 && <RackFilterFields filter={filter} woods={entry.woods} onChange={setFilter} />}
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
