import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { howMany } from '../../ui/how-many.ts';
import type { Names } from './names.ts';

/** What a wish costs, by its kind and its place in the wishes of the plan in hand. */
export type Price = (wish: keyof Wishes, same: (kept: Wishes) => number) => ComponentChildren;

interface Props {
  asked: BreakdownProblem;
  wishes: Wishes;
  names: Names;
  onChange(wishes: Wishes): void;
}

interface ListProps extends Props {
  plainOf: ((part: string) => number) | undefined;
  price: Price;
}

/** The wishes about boards: fixed to a part, of the best faces, or kept out; each can be dropped. */
export function BoardWishes({ plainOf, price, ...props }: ListProps) {
  const { wishes, names, onChange } = props;
  const { keepOut = [], fix = [], show = [] } = wishes;
  const row = (says: string, cost: ComponentChildren, dropped: Wishes) => (
    <li>
      <span>
        {says}
        {cost}
      </span>
      <button
        type="button"
        class="button"
        aria-label={`Delete: ${says}`}
        onClick={() => onChange({ ...wishes, ...dropped })}
      >
        Delete
      </button>
    </li>
  );
  return (
    <>
      <ul class="rows" aria-label="Wishes about boards">
        {fix.map((wish) =>
          row(
            `${names.part(wish.part)} from board ${names.board(wish.board)}`,
            price('fix', (kept) =>
              (kept.fix ?? []).findIndex(({ part, board }) => part === wish.part && board === wish.board),
            ),
            { fix: fix.filter((other) => other !== wish) },
          ),
        )}
        {show.map((part) => {
          const plain = plainOf?.(part) ?? 0;
          return row(
            `${names.part(part)} from boards with a good face`,
            <>
              {plain > 0 && <p class="small">From other boards: {howMany(plain, 'strip')}.</p>}
              {price('show', (kept) => (kept.show ?? []).indexOf(part))}
            </>,
            { show: show.filter((id) => id !== part) },
          );
        })}
        {keepOut.map((board) =>
          row(
            `Board ${names.board(board)} stays in the rack`,
            price('keepOut', (kept) => (kept.keepOut ?? []).indexOf(board)),
            { keepOut: keepOut.filter((id) => id !== board) },
          ),
        )}
      </ul>
      <NextWish {...props} />
    </>
  );
}

/** Stands for whichever boards are marked with a good face. */
const anyGood = 'good';

function NextWish({ asked, wishes, names, onChange }: Props) {
  const [board, setBoard] = useState('');
  const [part, setPart] = useState('');
  const chosen = asked.boards.find(({ id }) => id === board);
  const parts = asked.parts.filter(({ species }) => !chosen || species === chosen.species);
  const { keepOut = [], fix = [], show = [] } = wishes;
  const add = () => {
    if (board === anyGood) onChange({ ...wishes, show: [...show.filter((id) => id !== part), part] });
    else if (part === '') onChange({ ...wishes, keepOut: [...keepOut.filter((id) => id !== board), board] });
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
          { value: anyGood, label: 'with a good face' },
          ...asked.boards.map(({ id }) => ({ value: id, label: names.board(id) })),
        ]}
        onInput={setBoard}
      />
      <Pick
        label="goes to"
        value={part}
        options={[
          { value: '', label: board === anyGood ? 'Choose' : 'the rack' },
          ...parts.map(({ id }) => ({ value: id, label: names.part(id) })),
        ]}
        onInput={setPart}
      />
      <Button disabled={board === '' || (board === anyGood && part === '')} onClick={add}>
        Add wish
      </Button>
    </div>
  );
}
