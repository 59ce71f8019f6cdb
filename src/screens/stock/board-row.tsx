import { routeTo } from '../../app/routes.ts';
import type { Board } from '../../store/records/board.ts';
import { Length } from '../../ui/length.tsx';
import { speciesName } from '../../ui/species-name.ts';

/** One board in a list; a tap opens it. */
export function BoardRow({ board }: { board: Board }) {
  const { thickness } = board;
  return (
    <a class="board-row" href={routeTo('stock', board.id)}>
      <b class="mark-of">{board.chalk}</b>
      <span>
        <span>
          {'quarters' in thickness ? `${thickness.quarters}/4` : <Length mm={thickness.mm} bare />} ×{' '}
          <Length mm={board.width} bare />
          {board.farWidth !== undefined && (
            <>
              –<Length mm={board.farWidth} bare />
            </>
          )}{' '}
          × <Length mm={board.length} />
        </span>
        <span class="soft small">{speciesName(board.species)}</span>
      </span>
    </a>
  );
}
