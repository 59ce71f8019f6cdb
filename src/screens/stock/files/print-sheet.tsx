import type { Board } from '../../../store/records/board.ts';
import { speciesName } from '../../../ui/species-name.ts';
import { BoardSize } from '../board-size.tsx';
import { latestMoisture } from '../rack-filter.ts';
import { stateNames } from '../state-names.ts';

/** On paper only: the rack list as a table, or a label for each board's end. */
export function PrintSheet({ what, boards }: { what: 'list' | 'labels'; boards: readonly Board[] }) {
  if (what === 'labels') {
    return (
      <ul class="print-sheet labels">
        {boards.map((board) => (
          <li>
            <b>{board.chalk}</b>
            <span>{speciesName(board.species)}</span>
            <BoardSize board={board} />
          </li>
        ))}
      </ul>
    );
  }
  return (
    <table class="print-sheet">
      <caption>Rack list, {new Date().toLocaleDateString()}</caption>
      <thead>
        <tr>
          {['Mark', 'Wood', 'Size', 'Moisture', 'Where', 'Note'].map((name) => (
            <th scope="col">{name}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {boards.map((board) => (
          <tr>
            <th scope="row">{board.chalk}</th>
            <td>{speciesName(board.species)}</td>
            <td>
              <BoardSize board={board} />
            </td>
            <td>{Number.isFinite(latestMoisture(board)) && `${latestMoisture(board).toFixed(1)}%`}</td>
            <td>{stateNames[board.state]}</td>
            <td>{board.note}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
