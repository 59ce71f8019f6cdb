import { badNumber } from '../../core/answer/bad-number.ts';
import type { Board, Warp } from '../../store/records/board.ts';
import { OptionalLength } from '../../ui/settled.tsx';
import { changeBoard } from './change-board.ts';

interface Kind {
  readonly kind: keyof Warp;
  readonly name: string;
  readonly span: 'width' | 'length';
  readonly how: string;
}

const kinds: readonly Kind[] = [
  { kind: 'cup', name: 'Cup', span: 'width', how: 'Straightedge across the hollow face: the deepest gap.' },
  { kind: 'bow', name: 'Bow', span: 'length', how: 'String or straightedge along the hollow face: the deepest gap.' },
  { kind: 'crook', name: 'Crook', span: 'length', how: 'String along the hollow edge: the deepest gap.' },
  {
    kind: 'twist',
    name: 'Twist',
    span: 'width',
    how: 'Winding sticks across both ends, or the board on a flat bench: how far one corner lifts.',
  },
];

/** How far a board is from flat and straight; what isn't measured is left empty and assumed. */
export function BoardWarp({ board }: { board: Board }) {
  return (
    <section class="card" aria-label="Warp">
      <h2>Warp</h2>
      <div class="fields">
        {kinds.map(({ kind, name, span }) => (
          <OptionalLength
            label={name}
            value={board.warp?.[kind]}
            // Past a fifth of its span a curve is no longer shallow, and nobody would call such wood a board.
            check={(value) => badNumber('', `The ${kind}`, value, 'mm', { least: 0, most: board[span] / 5 })}
            onAccept={(depth) =>
              changeBoard(board.id, (now) => {
                const { [kind]: _, ...others } = now.warp ?? {};
                return { ...now, warp: depth === undefined ? others : { ...others, [kind]: depth } };
              })
            }
          />
        ))}
      </div>
      <details class="working">
        <summary>How to measure it</summary>
        <dl>
          {kinds.map(({ name, how }) => (
            <>
              <dt>
                <b>{name}</b>
              </dt>
              <dd>{how}</dd>
            </>
          ))}
        </dl>
      </details>
    </section>
  );
}
