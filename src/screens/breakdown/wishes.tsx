import { useState } from 'preact/hooks';
import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import type { WishCost } from '../../core/breakdown/wish-cost.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import type { Names } from './names.ts';
import { WishPrice } from './wish-price.tsx';

interface Props {
  asked: BreakdownProblem;
  wishes: Wishes;
  names: Names;
  /** The wishes of the plan in hand and what each costs; none before there is a plan. */
  planned?: { readonly wishes: Wishes; readonly consumed: number; readonly costs: readonly WishCost[] | undefined };
  onChange(wishes: Wishes): void;
}

/** What the maker wants beyond the least wood, each wish with what it costs. */
export function WishList({ asked, wishes, names, planned, onChange }: Props) {
  const { keepOut = [], fix = [], together = [] } = wishes;
  const price = (wish: keyof Wishes, same: (kept: Wishes) => number) => (
    <WishPrice planned={planned} wish={wish} index={planned ? same(planned.wishes) : -1} />
  );
  const panels = asked.parts.filter(({ panel }) => panel);
  return (
    <section class="card" aria-label="Wishes">
      <h2>Wishes</h2>
      <Tick
        label="Keep what is left over long"
        checked={wishes.longLeftovers ?? false}
        onInput={(longLeftovers) => onChange({ ...wishes, longLeftovers })}
      />
      {wishes.longLeftovers && price('longLeftovers', (kept) => (kept.longLeftovers ? 0 : -1))}
      <Tick
        label="Fewer seams"
        checked={wishes.fewerSeams ?? false}
        onInput={(fewerSeams) => onChange({ ...wishes, fewerSeams })}
      />
      {wishes.fewerSeams && price('fewerSeams', (kept) => (kept.fewerSeams ? 0 : -1))}
      {panels.map(({ id }) => {
        const held = together.find(({ part }) => part === id);
        return (
          <>
            <Pick
              label={`${names.part(id)}: its strips from`}
              value={String(held?.boards ?? 0)}
              options={[
                { value: '0', label: 'any boards' },
                { value: '1', label: 'one board' },
                { value: '2', label: 'two boards next to each other' },
              ]}
              onInput={(value) =>
                onChange({
                  ...wishes,
                  together: [
                    ...together.filter(({ part }) => part !== id),
                    ...(value === '0' ? [] : [{ part: id, boards: Number(value) }]),
                  ],
                })
              }
            />
            {held &&
              price('together', (kept) =>
                (kept.together ?? []).findIndex(({ part, boards }) => part === id && boards === held.boards),
              )}
          </>
        );
      })}
      <ul class="rows" aria-label="Boards fixed or kept out">
        {fix.map((wish) => (
          <li>
            <span>
              {names.part(wish.part)} from board {names.board(wish.board)}
              {price('fix', (kept) =>
                (kept.fix ?? []).findIndex(({ part, board }) => part === wish.part && board === wish.board),
              )}
            </span>
            <Drop
              what={`${names.part(wish.part)} from board ${names.board(wish.board)}`}
              onDrop={() => onChange({ ...wishes, fix: fix.filter((other) => other !== wish) })}
            />
          </li>
        ))}
        {keepOut.map((board) => (
          <li>
            <span>
              Board {names.board(board)} stays in the rack
              {price('keepOut', (kept) => (kept.keepOut ?? []).indexOf(board))}
            </span>
            <Drop
              what={`board ${names.board(board)} stays in the rack`}
              onDrop={() => onChange({ ...wishes, keepOut: keepOut.filter((id) => id !== board) })}
            />
          </li>
        ))}
      </ul>
      <BoardWish {...{ asked, wishes, names, onChange }} />
    </section>
  );
}

const Drop = ({ what, onDrop }: { what: string; onDrop(): void }) => (
  <button type="button" class="button" aria-label={`Drop: ${what}`} onClick={onDrop}>
    Drop
  </button>
);

function BoardWish({ asked, wishes, names, onChange }: Props) {
  const [board, setBoard] = useState('');
  const [part, setPart] = useState('');
  const chosen = asked.boards.find(({ id }) => id === board);
  const parts = asked.parts.filter(({ species }) => !chosen || species === chosen.species);
  const { keepOut = [], fix = [] } = wishes;
  const add = () => {
    if (part === '') onChange({ ...wishes, keepOut: [...keepOut.filter((id) => id !== board), board] });
    else if (!fix.some((wish) => wish.part === part && wish.board === board))
      onChange({ ...wishes, fix: [...fix, { part, board }] });
    setBoard('');
    setPart('');
  };
  return (
    <div class="fields">
      <Pick
        label="Board"
        value={board}
        options={[
          { value: '', label: 'Choose' },
          ...asked.boards.map(({ id }) => ({ value: id, label: names.board(id) })),
        ]}
        onInput={setBoard}
      />
      <Pick
        label="goes to"
        value={part}
        options={[{ value: '', label: 'the rack' }, ...parts.map(({ id }) => ({ value: id, label: names.part(id) }))]}
        onInput={setPart}
      />
      <button type="button" class="button" disabled={board === ''} onClick={add}>
        Add this wish
      </button>
    </div>
  );
}
