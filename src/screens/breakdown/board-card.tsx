import { clearStretches } from '../../core/breakdown/clear-stretches.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Tick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { AssumedWarp } from './assumed-warp.tsx';
import { BoardDrawing } from './board-drawing.tsx';
import type { BoardSheet, SheetBlank } from './board-sheet.ts';
import { cutStrips, isCut, withSpoilt } from './cut-state.ts';
import type { Names } from './names.ts';
import { RipDrawing } from './rip-drawing.tsx';
import { changePlan, tickCut } from './store-plan.ts';

interface Props {
  sheet: BoardSheet;
  asked: BreakdownProblem;
  plan: Plan;
  stored: Board | undefined;
  names: Names;
}

/** One board at the bench: its drawing, the crosscuts from the chalked end, the rips of each blank, and the tick once it is cut. */
export function BoardCard({ sheet, asked, plan, stored, names }: Props) {
  const { board, crosscuts, blanks, leftover } = sheet;
  const mark = names.board(board.id);
  const cut = isCut(plan, board.id);
  const longest = Math.max(...asked.boards.map(({ length }) => length));
  return (
    <section class={cut ? 'card board-card done' : 'card board-card'} aria-label={`Board ${mark}`}>
      <header>
        <h3>Board {mark}</h3>
        <span class="soft">
          <Length mm={board.width} bare /> × <Length mm={board.length} />
        </span>
      </header>
      <BoardDrawing sheet={sheet} mark={mark} ripKerf={asked.shop.ripKerf} longest={longest} />
      {board.clear && <p class="soft small">Hatched: knots, splits and taper, which the blanks stay clear of.</p>}
      {stored && <AssumedWarp board={stored} planned={board} />}
      <ol class="cuts" aria-label={`Crosscuts of board ${mark}`}>
        {crosscuts.map((one) => (
          <li>
            <Say phrase={one.say} />
          </li>
        ))}
        {crosscuts.length === 0 && <li>Use the whole length.</li>}
      </ol>
      {blanks.map((one) => (
        <BlankCuts one={one} {...{ sheet, asked, plan, names }} />
      ))}
      {leftover > 0 && (
        <p class="soft">
          Left: <Length mm={leftover} />, back to the rack.
        </p>
      )}
      <Tick label={`Board ${mark} is cut`} checked={cut} onInput={(on) => void tickCut(plan, board.id, on)} />
    </section>
  );
}

interface BlankProps extends Omit<Props, 'stored'> {
  one: SheetBlank;
}

function BlankCuts({ one, sheet: { board }, asked, plan, names }: BlankProps) {
  const { blank, letter, rips, strips } = one;
  const clear = clearStretches(board).find(({ start, length }) => blank.start < start + length);
  const cut = cutStrips(plan, blank);
  return (
    <div class="blank">
      <h4>
        Blank {letter}, <Length mm={blank.length} /> long
      </h4>
      <RipDrawing
        one={one}
        width={clear?.width ?? board.width}
        thickness={board.thickness}
        ripKerf={asked.shop.ripKerf}
        widest={Math.max(...asked.boards.map(({ width }) => width))}
      />
      {clear && clear.offset > 0 && (
        <p>
          First rip <Length mm={clear.offset} /> off the left edge, seen from the chalked end.
        </p>
      )}
      {rips.map((rip) => (
        <p>
          <Say phrase={rip.say} />
        </p>
      ))}
      <ul class="rows" aria-label={`Strips of blank ${letter}`}>
        {strips.map(({ strip, at }) => {
          const name = strip.part === '' ? 'Spoilt' : names.piece(strip.part, strip.unit);
          return (
            <li class={strip.spoilt ? 'spoilt' : undefined}>
              <span>
                <Length mm={strip.width} /> for {name}
              </span>
              {at < cut && (
                <button
                  type="button"
                  class="button"
                  aria-pressed={strip.spoilt === true}
                  aria-label={`Strip ${at + 1} of blank ${letter} for ${name} is spoilt`}
                  onClick={() => void changePlan(plan.id, (now) => withSpoilt(now, one.at, at, !strip.spoilt))}
                >
                  Spoilt
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}
