import { useAll } from '../../app/live.ts';
import { undoable } from '../../app/notices.ts';
import { boards } from '../../store/boards.ts';
import type { Milling } from '../../store/records/milling.ts';
import { Button } from '../../ui/button.tsx';
import { BoardSize } from '../stock/board-size.tsx';
import { cutBoards } from './cut-boards.ts';
import { inputOfRun } from './steps-of-run.ts';
import { storeCut } from './store-cut.ts';

/** Boards that are crosscut leave the rack, and what is left of them comes back, in one tap. */
export function StockCard({ run }: { run: Milling }) {
  const rack = useAll(boards);
  if (!rack) return null;
  const { cut, offcuts } = cutBoards(inputOfRun(run), rack);
  if (cut.length === 0) return null;
  const marks = cut.map(({ chalk }) => chalk).join(', ');
  const settle = () => undoable(storeCut({ cut, offcuts }), `${marks} out of the rack.`);
  return (
    <section class="card" aria-label="The rack">
      <p>
        The rack still counts {marks} as whole. {offcuts.length > 0 && 'Left by the plan:'}
      </p>
      {offcuts.length > 0 && (
        <ul class="rows">
          {offcuts.map((offcut) => (
            <li key={offcut.chalk}>
              <span>{offcut.chalk}</span>
              <BoardSize board={offcut} />
            </li>
          ))}
        </ul>
      )}
      <Button onClick={settle}>{offcuts.length > 0 ? 'They are cut; offcuts to the rack' : 'They are cut'}</Button>
    </section>
  );
}
