import { boardProblem } from '../../core/milling/flat-thickness.ts';
import type { Board } from '../../store/records/board.ts';
import { roughShape } from '../../store/records/board-shape.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { OptionalLength } from '../../ui/settled.tsx';
import { changeBoard } from './change-board.ts';

const kinds = [
  { kind: 'cup', name: 'Cup', how: 'Straightedge across the hollow face: the deepest gap.' },
  { kind: 'bow', name: 'Bow', how: 'String or straightedge along the hollow face: the deepest gap.' },
  { kind: 'crook', name: 'Crook', how: 'String along the hollow edge: the deepest gap.' },
  {
    kind: 'twist',
    name: 'Twist',
    how: 'Winding sticks across both ends, or the board on a flat bench: how far one corner lifts.',
  },
] as const;

/** How far a board is from flat and straight; what isn't measured is left empty and assumed. */
export function BoardWarp({ board }: { board: Board }) {
  return (
    <section class="card" aria-label="Warp">
      <h2>Warp</h2>
      <div class="fields">
        {kinds.map(({ kind, name }) => (
          <OptionalLength
            label={name}
            value={board.warp?.[kind]}
            check={(depth) => boardProblem({ ...roughShape(board), [kind]: depth })}
            onAccept={(depth) =>
              changeBoard(board.id, (now) => ({ ...now, warp: withOptional(now.warp ?? {}, kind, depth) }))
            }
          />
        ))}
      </div>
      <details class="working">
        <summary>How to measure it</summary>
        <dl>
          {kinds.map(({ name, how }) => [
            <dt>
              <b>{name}</b>
            </dt>,
            <dd>{how}</dd>,
          ])}
        </dl>
      </details>
    </section>
  );
}
