import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import { BoardWishes, type Price } from './board-wishes.tsx';
import type { Names } from './names.ts';
import { type Planned, WishPrice } from './wish-price.tsx';

interface Props {
  asked: BreakdownProblem;
  wishes: Wishes;
  names: Names;
  /** The wishes of the plan in hand and what each costs; none before there is a plan. */
  planned?: Planned & {
    /** How many strips of a part that is to show are from boards without a good face. */
    plainOf(part: string): number;
  };
  onChange(wishes: Wishes): void;
}

/** What the maker wants beyond the least wood, each wish with what it costs. */
export function WishList({ asked, wishes, names, planned, onChange }: Props) {
  const { together = [] } = wishes;
  const price: Price = (wish, same) => (
    <WishPrice planned={planned} wish={wish} index={planned ? same(planned.wishes) : -1} />
  );
  const panels = asked.parts.filter(({ panel }) => panel);
  return (
    <section class="card" aria-label="Wishes">
      <h2>Wishes</h2>
      <Tick
        label="Long leftovers"
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
                { value: '2', label: 'two neighbouring boards' },
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
      <BoardWishes {...{ asked, wishes, names, plainOf: planned?.plainOf, price, onChange }} />
    </section>
  );
}
