import { useEffect, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { useAll, useLive, useOne } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { percent } from '../../core/answer/quantity.ts';
import type { BreakdownPlan, BreakdownProblem, Wishes } from '../../core/breakdown/problem-types.ts';
import { boards } from '../../store/boards.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import type { Board } from '../../store/records/board.ts';
import { partCount } from '../../store/records/part-count.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import { Amount } from '../../ui/amount.tsx';
import { Button } from '../../ui/button.tsx';
import { howMany } from '../../ui/how-many.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { PieceList } from '../piece/piece-list.tsx';
import { questions } from '../questions.ts';
import { AssumedShop } from '../shop/assumed-shop.tsx';
import './breakdown.css';
import { newlySpoilt } from './cut-state.ts';
import { namesOf } from './names.ts';
import { nextProblem } from './next-problem.ts';
import { PlanShown } from './plan-shown.tsx';
import { solvedProblem } from './solved-problem.ts';
import { choosePlan, keepPlan } from './store-plan.ts';
import { usePlanner } from './use-planner.ts';
import { whereToFix } from './where-to-fix.ts';
import { WishList } from './wishes.tsx';

/** Which board gives which panel: plans a piece from the rack, and shows the plan board by board. */
export default function BreakdownScreen({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const rack = useAll(boards);
  const kept = useLive(['plan'], () => plans.where('pieceId', id), id);
  if (piece === undefined || !rack || !kept) return null;
  if (piece === null) return <PieceList screen="breakdown" kicker="Breakdown" />;
  return <PlanOf piece={piece} rack={rack} kept={kept} />;
}

function PlanOf({ piece, rack, kept }: { piece: Piece; rack: Board[]; kept: Plan[] }) {
  const plan = planInHand(kept);
  const names = namesOf(piece, rack);
  const planner = usePlanner(names);
  const [asked, setAsked] = useState<BreakdownProblem>();
  // It stands at the top; what asked for the plan may be far below.
  useEffect(() => {
    if (planner.trouble) scrollTo(0, 0);
  }, [planner.trouble]);
  const draft = useDraft<Wishes>(`wishes-1-${piece.id}`, plan ? (solvedProblem(plan).wishes ?? {}) : {});
  const wishes = draft.value;
  if (!wishes) return null;
  const next = nextProblem(shop.value, rack, piece, wishes, plan);
  const spoilt = plan ? newlySpoilt(plan) : 0;
  const running = planner.done !== undefined;

  const take = (problem: BreakdownProblem, found: BreakdownPlan) => {
    if (plan && samePlan(plan, problem, found)) notify('No better plan was found.');
    else void keepPlan(piece, problem, found);
  };
  const start = (effort = 1) => {
    setAsked(next);
    planner.plan(next, (found) => take(next, found), { effort, ...(plan && { startFrom: plan }) });
  };
  const way = planner.trouble && whereToFix(planner.trouble.field, asked ?? next, piece.id);
  return (
    <Screen
      question={questions.breakdown}
      kicker={`Breakdown · ${piece.name}`}
      action={
        running ? (
          <Button look="big" onClick={planner.stop}>
            Stop, take the best so far
          </Button>
        ) : !plan || spoilt > 0 ? (
          <Button look="big now" onClick={() => start()}>
            {plan ? 'Plan the rest again' : 'Plan the cuts'}
          </Button>
        ) : (
          <a class="button big now" href={routeTo('mill', piece.id)}>
            Mill it
          </a>
        )
      }
    >
      <div aria-live="polite" class="readout">
        {running && (
          <p class="answer wait">
            <span class="figure words">
              Planning: <Amount of={percent(Math.round((planner.done ?? 0) * 100))} />
            </span>
          </p>
        )}
        {planner.trouble && (
          <div class="answer now">
            <p>
              <Say phrase={planner.trouble.message} />
            </p>
            {way && (
              <a class="button" href={way.href}>
                {way.label}
              </a>
            )}
          </div>
        )}
        {!running && spoilt > 0 && (
          <p class="answer now">{howMany(spoilt, 'strip')} spoilt. What is cut and good stays.</p>
        )}
        {!plan && !running && !planner.trouble && (
          <p>
            {howMany(next.boards.length, 'board')} in the rack, {howMany(partCount(piece), 'part')} to make, within the
            limits of your <a href={routeTo('shop')}>shop</a>.
          </p>
        )}
      </div>
      {!running && <AssumedShop />}
      {plan ? (
        <PlanShown
          {...{ plan, piece, rack, kept, names, next, wishes, running }}
          onWishes={draft.set}
          onChoose={(older) => {
            draft.set(solvedProblem(older).wishes ?? {});
            void choosePlan(older);
          }}
          onAgain={start}
        />
      ) : (
        next.boards.length > 0 &&
        next.parts.length > 0 && <WishList asked={next} onChange={draft.set} {...{ wishes, names }} />
      )}
    </Screen>
  );
}

const samePlan = (plan: Plan, problem: BreakdownProblem, found: BreakdownPlan): boolean =>
  JSON.stringify([plan.blanks, plan.short]) === JSON.stringify([found.blanks, found.short]) &&
  JSON.stringify(plan.problem) === JSON.stringify(problem);
