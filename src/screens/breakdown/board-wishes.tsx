import { useState } from 'preact/hooks';
import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { howMany } from '../../ui/how-many.ts';
import type { Names } from './names.ts';
import type { Price } from './wish-price.tsx';

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
  const listed = [
    ...fix.map((of) => ['fix', of, `${names.of(of.part)} from board ${names.of(of.board)}`] as const),
    ...show.map((of) => ['show', of, `${names.of(of)} from boards with a good face`] as const),
    ...keepOut.map((of) => ['keepOut', of, `Board ${names.of(of)} stays in the rack`] as const),
  ];
  return (
    <>
      <ul class="rows" aria-label="Wishes about boards">
        {listed.map(([wish, of, says]) => {
          const plain = wish === 'show' ? (plainOf?.(of) ?? 0) : 0;
          return (
            <li>
              <span>
                {says}
                {plain > 0 && <p class="small">From other boards: {howMany(plain, 'strip')}.</p>}
                {price(wish, of)}
              </span>
              <Button
                label={`Delete: ${says}`}
                onClick={() => onChange({ ...wishes, [wish]: (wishes[wish] ?? []).filter((other) => other !== of) })}
              >
                Delete
              </Button>
            </li>
          );
        })}
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
  const add = () => {
    const [kind, wish] =
      board === anyGood
        ? (['show', part] as const)
        : part === ''
          ? (['keepOut', board] as const)
          : (['fix', { part, board }] as const);
    const others = (wishes[kind] ?? []).filter((one) => JSON.stringify(one) !== JSON.stringify(wish));
    onChange({ ...wishes, [kind]: [...others, wish] });
    setBoard('');
    setPart('');
  };
  const named = (list: readonly { readonly id: string }[]) =>
    list.map(({ id }) => ({ value: id, label: names.of(id) }));
  return (
    <div class="fields">
      <Pick
        label="Board"
        value={board}
        options={[
          { value: '', label: 'Choose' },
          { value: anyGood, label: 'with a good face' },
          ...named(asked.boards),
        ]}
        onInput={setBoard}
      />
      <Pick
        label="goes to"
        value={part}
        options={[{ value: '', label: board === anyGood ? 'Choose' : 'the rack' }, ...named(parts)]}
        onInput={setPart}
      />
      <Button disabled={board === '' || (board === anyGood && part === '')} onClick={add}>
        Add wish
      </Button>
    </div>
  );
}
