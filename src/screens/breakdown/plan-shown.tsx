import { useState } from 'preact/hooks';
import { wood } from '../../core/answer/quantity.ts';
import { planTotals } from '../../core/breakdown/plan-totals.ts';
import type { BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Amount } from '../../ui/amount.tsx';
import { Button } from '../../ui/button.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { BoardsView } from './boards-view.tsx';
import { ChangeView } from './change-view.tsx';
import { consumedWorking } from './consumed-working.ts';
import { isCut } from './cut-state.ts';
import type { Names } from './names.ts';
import { PanelsView } from './panels-view.tsx';
import { planChanges } from './plan-changes.ts';
import { ShortageList } from './shortage-list.tsx';
import { solvedProblem } from './solved-problem.ts';
import { WoodView } from './wood-view.tsx';

const looks = optionsOf({ boards: 'Boards', panels: 'Panels', wood: 'Wood', change: 'Change' });

type Look = (typeof looks)[number]['value'];

interface Props {
  plan: Plan;
  piece: Piece;
  rack: readonly Board[];
  kept: readonly Plan[];
  names: Names;
  next: BreakdownProblem;
  wishes: Wishes;
  running: boolean;
  onWishes(wishes: Wishes): void;
  onChoose(plan: Plan): void;
  onAgain(effort?: number): void;
}

/** The plan in hand: whether the wood is enough, then by boards, by panels, by wood, or how to have it otherwise. */
export function PlanShown(props: Props) {
  const { plan, piece, rack, names, running, onAgain } = props;
  const [look, setLook] = useState<Look>('boards');
  const asked = solvedProblem(plan);
  const shown = { ...props, asked };
  const totals = planTotals(asked, plan);
  const short = plan.short.length > 0;
  const changes = planChanges(plan, piece, rack, names);
  const cut = asked.boards.filter(({ id }) => isCut(plan, id)).length;
  return (
    <>
      <div class={short ? 'answer now' : 'answer'}>
        <p class="figure words">
          {short ? 'Not enough wood' : `Enough: ${totals.boards} of ${asked.boards.length} boards`}
        </p>
        {short && <ShortageList {...shown} />}
        <p>
          It takes <Amount of={wood(totals.volume)} />
          {cut > 0 && `; ${cut} of ${totals.boards} cut`}.
        </p>
        <ShowWorking of={consumedWorking(plan, totals.volume)} />
      </div>
      {changes.length > 0 && (
        <div class="answer now">
          <p>Since this plan: {changes.join(' ')}</p>
          <Button disabled={running} onClick={() => onAgain()}>
            Plan again
          </Button>
        </div>
      )}
      <div class="looks">
        <Choice<Look> label="Look at" value={look} options={looks} onInput={setLook} />
      </div>
      {look === 'boards' && <BoardsView {...shown} />}
      {look === 'panels' && <PanelsView {...shown} />}
      {look === 'wood' && <WoodView {...shown} />}
      {look === 'change' && <ChangeView {...shown} />}
    </>
  );
}
