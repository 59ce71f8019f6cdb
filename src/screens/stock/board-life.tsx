import { useLive } from '../../app/live.ts';
import { offerUndo } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { boards } from '../../store/boards.ts';
import { pieces } from '../../store/pieces.ts';
import type { Board, BoardState } from '../../store/records/board.ts';
import { newest } from '../../store/records/newest.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Card } from '../../ui/card.tsx';
import { Choice, optionsOf, Pick } from '../../ui/fields.tsx';
import { BoardSize } from './board-size.tsx';
import { OffcutEntry } from './offcut-entry.tsx';
import { stateNames } from './state-names.ts';

/** Where the board is in its life: in the rack, set aside for a piece, cut, used up; and what was cut from it. */
export function BoardLife({ board }: { board: Board }) {
  const around = useLive(
    ['board', 'piece'],
    async () => ({
      pieces: await pieces.all(),
      parent: board.parentId === undefined ? undefined : await boards.get(board.parentId),
      offcuts: await boards.where('parentId', board.id),
    }),
    `${board.id} ${board.parentId}`,
  );
  if (!around) return null;
  const inWork = newest(around.pieces.filter(({ finishedAt }) => finishedAt === undefined));
  const become = (state: BoardState, pieceId?: string) => {
    boards.edit(board.id, (now) => withOptional({ ...now, state }, 'pieceId', pieceId));
    // One that is cut, or set aside for another piece, by then stays so.
    offerUndo(`${board.chalk}: ${stateNames[state].toLowerCase()}.`, () =>
      boards.edit(board.id, (now) =>
        now.state === state && now.pieceId === pieceId
          ? withOptional({ ...now, state: board.state }, 'pieceId', board.pieceId)
          : now,
      ),
    );
  };
  return (
    <Card title="Where is it?">
      <Choice
        label="The board is"
        value={board.state}
        options={optionsOf(stateNames)}
        onInput={(state) => become(state, state === 'setAside' ? (board.pieceId ?? inWork?.id) : undefined)}
      />
      {board.state === 'setAside' && around.pieces.length > 0 && (
        <Pick
          label="For the piece"
          value={board.pieceId ?? ''}
          options={[
            { value: '', label: 'None named' },
            ...around.pieces.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onInput={(pieceId) => become('setAside', pieceId || undefined)}
        />
      )}
      {around.parent && (
        <p>
          Cut from <a href={routeTo('stock', around.parent.id)}>board {around.parent.chalk}</a>.
        </p>
      )}
      {around.offcuts.length > 0 && (
        <ul class="rows" aria-label="Offcuts">
          {around.offcuts.map((offcut) => (
            <li>
              <a href={routeTo('stock', offcut.id)}>Offcut {offcut.chalk}</a>
              <BoardSize board={offcut} />
            </li>
          ))}
        </ul>
      )}
      <OffcutEntry board={board} />
    </Card>
  );
}
