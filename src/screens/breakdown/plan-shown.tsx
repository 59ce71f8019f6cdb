import { m2, mm } from '../../core/answer/quantity.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Amount } from '../../ui/amount.tsx';
import { Length } from '../../ui/length.tsx';
import { BoardDrawing } from './board-drawing.tsx';

interface Props {
  plan: Plan;
  problem: BreakdownProblem;
  names: ReadonlyMap<string, string>;
  rack: readonly Board[];
}

/** The plan: whether the wood is enough, then board by board, then panel by panel. */
export function PlanShown({ plan, problem, names, rack }: Props) {
  const partName = (id: string) => names.get(id) ?? id;
  const used = problem.boards.filter(({ id }) => plan.blanks.some(({ board }) => board === id));
  const consumed = plan.blanks.reduce((sum, blank) => {
    const board = problem.boards.find(({ id }) => id === blank.board);
    return sum + ((board?.width ?? 0) * (blank.length + problem.shop.crosscutKerf)) / 1e6;
  }, 0);
  return (
    <>
      <div class={plan.short.length > 0 ? 'answer now' : 'answer'}>
        <p class="figure words">
          {plan.short.length > 0 ? 'Not enough wood' : `Enough: ${used.length} of ${problem.boards.length} boards`}
        </p>
        {plan.short.map(({ part, unit, missingWidth }) => (
          <p>
            {partName(part)} {unit} lacks <Length mm={missingWidth} /> of width.
          </p>
        ))}
        <p>
          <Amount of={m2(consumed)} /> of board goes into it.
        </p>
      </div>
      <h2>Board by board</h2>
      {used.map((board) => {
        const blanks = plan.blanks.filter((blank) => blank.board === board.id).sort((a, b) => a.start - b.start);
        const mark = rack.find(({ id }) => id === board.id)?.chalk ?? '?';
        return (
          <section class="card" aria-label={`Board ${mark}`}>
            <BoardDrawing
              board={board}
              mark={mark}
              blanks={blanks}
              ripKerf={problem.shop.ripKerf}
              partName={partName}
            />
            <ol class="rows">
              {blanks.map((blank) => (
                <li>
                  <span>
                    Crosscut at <Amount of={mm(blank.start + blank.length)} /> from the marked end
                    {blank.start > 0 && (
                      <>
                        {' '}
                        (from <Amount of={mm(blank.start)} />)
                      </>
                    )}
                    ; rip{' '}
                    {blank.strips.map((strip, n) => (
                      <>
                        {n > 0 && ', '}
                        <Length mm={strip.width} /> for {partName(strip.part)} {strip.unit}
                      </>
                    ))}
                  </span>
                </li>
              ))}
            </ol>
          </section>
        );
      })}
    </>
  );
}
