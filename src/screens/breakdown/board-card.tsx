import { routeTo } from '../../app/routes.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Tick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { BoardSize } from '../stock/board-size.tsx';
import { AssumedWarp } from './assumed-warp.tsx';
import { BlankCuts } from './blank-cuts.tsx';
import { BoardDrawing } from './board-drawing.tsx';
import type { BoardSheet } from './board-sheet.ts';
import { isCut } from './cut-state.ts';
import type { Names } from './names.ts';
import { tickCut } from './store-plan.ts';

interface Props {
  sheet: BoardSheet;
  asked: BreakdownProblem;
  plan: Plan;
  stored: Board | undefined;
  names: Names;
}

/** One board at the bench: its drawing, the crosscuts from the chalked end, the rips of each blank, and the tick once it is cut. */
export function BoardCard(props: Props) {
  const { sheet, asked, plan, stored, names } = props;
  const { board, crosscuts, blanks, leftover } = sheet;
  const mark = names.of(board.id);
  const cut = isCut(plan, board.id);
  const longest = Math.max(...asked.boards.map(({ length }) => length));
  return (
    <section class={cut ? 'card board-card done' : 'card board-card'} aria-label={`Board ${mark}`}>
      <header>
        <h2>Board {mark}</h2>
        <span class="soft">{stored && <BoardSize board={stored} />}</span>
      </header>
      <BoardDrawing sheet={sheet} mark={mark} ripKerf={asked.shop.ripKerf} longest={longest} />
      {board.clear && <p class="soft small">Hatched: knots, splits, taper, crook.</p>}
      {stored && <AssumedWarp board={stored} planned={board} />}
      <ol class="cuts" aria-label={`Crosscuts of board ${mark}`}>
        {crosscuts.map((one) => (
          <li>
            <Say phrase={one.say} />
          </li>
        ))}
        {crosscuts.length === 0 && <li>No crosscut.</li>}
      </ol>
      {blanks.map((one) => (
        <BlankCuts one={one} {...props} />
      ))}
      {leftover > 0 && (
        <p class="soft">
          Left: <Length mm={leftover} />, back to the rack.
        </p>
      )}
      <Tick label={`Board ${mark} is cut`} checked={cut} onInput={(on) => void tickCut(plan, board.id, on)} />
      {cut && stored && leftover > 0 && (
        <a class="button" href={routeTo('stock', board.id)}>
          Log what is left
        </a>
      )}
    </section>
  );
}
