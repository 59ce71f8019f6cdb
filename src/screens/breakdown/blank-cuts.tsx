import type { CutOfBlank } from '../../core/breakdown/board-cuts.ts';
import { clearOf } from '../../core/breakdown/clear-stretches.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { plans } from '../../store/plans.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import type { BoardSheet } from './board-sheet.ts';
import { cutBefore, cutStrips, withSpoilt } from './cut-state.ts';
import type { Names } from './names.ts';
import { RipDrawing } from './rip-drawing.tsx';

interface Props {
  one: CutOfBlank;
  sheet: BoardSheet;
  asked: BreakdownProblem;
  plan: Plan;
  names: Names;
}

/** The rips of one blank, and which strip goes where; once it is cut, strips can be marked spoilt. */
export function BlankCuts(props: Props) {
  const {
    one,
    sheet: { board },
    asked,
    plan,
  } = props;
  const { blank, letter, rips } = one;
  const clear = clearOf(board, blank);
  const off = cutBefore(plan, blank) !== undefined;
  return (
    <div class="blank">
      <h3>
        Blank {letter}, <Length mm={blank.length} /> long{off && ', cut'}
      </h3>
      <RipDrawing
        one={one}
        width={clear?.width ?? board.width}
        thickness={board.thickness}
        ripKerf={asked.shop.ripKerf}
        widest={Math.max(...asked.boards.map(({ width }) => width))}
      />
      {clear && clear.offset > 0 && !off && (
        <p>
          First {clear.offset <= asked.shop.ripKerf ? 'joint' : 'rip'} <Length mm={clear.offset} /> off the left edge,
          seen from the chalked end; that edge then runs along the fence.
        </p>
      )}
      {rips.length === 0 && !off && <p>No rip.</p>}
      {rips.map((rip) => (
        <p>
          <Say phrase={rip} />
        </p>
      ))}
      <ul class="rows" aria-label={`Strips of blank ${letter}`}>
        {one.strips.map(({ at }) => (
          <StripLine at={at} {...props} />
        ))}
      </ul>
    </div>
  );
}

function StripLine({ one: { at: blankAt, blank, letter }, plan, names, at }: Props & { at: number }) {
  const strip = blank.strips[at];
  if (!strip) return null;
  const name = names.piece(strip.part, strip.unit);
  const spoilt = strip.spoilt ?? false;
  return (
    <li class={spoilt ? 'spoilt' : undefined}>
      <span>
        <Length mm={strip.width} /> for {name}
      </span>
      {at < cutStrips(plan, blank) && (
        <button
          type="button"
          class="button"
          aria-pressed={spoilt}
          aria-label={`Spoilt: strip ${at + 1} of blank ${letter}, for ${name}`}
          onClick={() => plans.edit(plan.id, (now) => withSpoilt(now, blankAt, at, !spoilt))}
        >
          Spoilt
        </button>
      )}
    </li>
  );
}
