import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import { Card } from '../../ui/card.tsx';
import { optionsOf, Pick, Tick } from '../../ui/fields.tsx';
import { BoardWishes } from './board-wishes.tsx';
import type { Names } from './names.ts';
import { type Planned, type Price, WishPrice } from './wish-price.tsx';

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

const yesOrNo = optionsOf({ longLeftovers: 'Long leftovers', fewerSeams: 'Fewer seams' });
const from = optionsOf({ 0: 'any boards', 1: 'one board', 2: 'two neighbouring boards' });

/** What the maker wants beyond the least wood, each wish with what it costs. */
export function WishList({ asked, wishes, names, planned, onChange }: Props) {
  const { together = [] } = wishes;
  const price: Price = (wish, of) => planned && <WishPrice {...{ planned, wish, of }} />;
  return (
    <Card title="Wishes">
      {yesOrNo.map(({ value: wish, label }) => (
        <>
          <Tick
            label={label}
            checked={wishes[wish] ?? false}
            onInput={(wished) => onChange({ ...wishes, [wish]: wished })}
          />
          {wishes[wish] && price(wish, true)}
        </>
      ))}
      {asked.parts
        .filter(({ panel }) => panel)
        .map(({ id }) => {
          const held = together.find(({ part }) => part === id);
          const others = together.filter((wish) => wish !== held);
          return (
            <>
              <Pick
                label={`${names.of(id)}: its strips from`}
                value={`${held?.boards ?? 0}`}
                options={from}
                onInput={(boards) =>
                  onChange({
                    ...wishes,
                    together: boards === '0' ? others : [...others, { part: id, boards: Number(boards) }],
                  })
                }
              />
              {held && price('together', held)}
            </>
          );
        })}
      <BoardWishes {...{ asked, wishes, names, plainOf: planned?.plainOf, price, onChange }} />
    </Card>
  );
}
