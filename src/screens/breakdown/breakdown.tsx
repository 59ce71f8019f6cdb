import { useEffect, useRef, useState } from 'preact/hooks';
import { useAll, useLive, useOne } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import type { Problem } from '../../core/answer/problem.ts';
import { percent } from '../../core/answer/quantity.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { boards } from '../../store/boards.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Json } from '../../store/records/record.ts';
import { Amount } from '../../ui/amount.tsx';
import { Screen } from '../../ui/screen.tsx';
import { startBreakdown } from '../../workers/breakdown-client.ts';
import { PlanShown } from './plan-shown.tsx';
import { problemFromRecords } from './problem-from-records.ts';
import { WithNames } from './with-names.tsx';

type Run = ReturnType<typeof startBreakdown>;

/** Which board gives which panel: plans a piece from the rack, and shows the plan board by board. */
export default function BreakdownScreen({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const rack = useAll(boards);
  const kept = useLive(['plan'], () => plans.where('pieceId', id), id);
  if (piece === undefined || !rack || !kept) return null;
  if (piece === null) {
    return (
      <Screen question="Which piece?" kicker="Breakdown">
        <p>A plan belongs to a piece. Make one, list its parts, then plan the cuts.</p>
        <a class="button big now" href={routeTo('piece', 'new')}>
          New piece
        </a>
      </Screen>
    );
  }
  return <PlanOf piece={piece} rack={rack} plan={kept.find(({ chosen }) => chosen)} older={kept} />;
}

function PlanOf({ piece, rack, plan, older }: { piece: Piece; rack: Board[]; plan: Plan | undefined; older: Plan[] }) {
  const [done, setDone] = useState<number>();
  const [trouble, setTrouble] = useState<Problem>();
  const run = useRef<Run>(undefined);
  useEffect(() => () => run.current?.drop(), []);
  const problem = problemFromRecords(shop.value, rack, piece);
  const names = new Map([
    ...piece.parts.map((part) => [part.id, part.name] as const),
    ...rack.map((board) => [board.id, `board ${board.chalk}`] as const),
  ]);

  const store = async (found: BreakdownPlan) => {
    try {
      await plans.putMany(older.filter(({ chosen }) => chosen).map((before) => ({ ...before, chosen: false })));
      await plans.add({ pieceId: piece.id, problem: problem as unknown as Json, ...found, chosen: true });
    } catch {
      // The shell keeps and shows what the phone did not take.
    }
  };
  const start = () => {
    setTrouble(undefined);
    setDone(0);
    run.current = startBreakdown(
      problem,
      (news) => {
        if (news.kind === 'problem') {
          setTrouble(news);
          setDone(undefined);
        } else if (news.finished) {
          setDone(undefined);
          void store(news.plan);
        } else setDone(news.done);
      },
      () => setDone(undefined),
    );
  };
  const running = done !== undefined;
  return (
    <Screen
      question="Which board gives which panel?"
      kicker={`Breakdown · ${piece.name}`}
      action={
        running ? (
          <button type="button" class="button big" onClick={() => run.current?.stop()}>
            Stop, take the best so far
          </button>
        ) : plan ? (
          <a class="button big now" href={routeTo('mill', piece.id)}>
            Mill it
          </a>
        ) : (
          <button type="button" class="button big now" onClick={start}>
            Plan the cuts
          </button>
        )
      }
    >
      <div aria-live="polite" class="readout">
        {running && (
          <p class="answer wait">
            <span class="figure words">
              Planning: <Amount of={percent(Math.round(done * 100))} />
            </span>
          </p>
        )}
        {trouble && (
          <p class="answer now">
            <span>
              <WithNames said={trouble.message} names={names} />
            </span>
          </p>
        )}
        {!plan && !running && !trouble && (
          <p>
            {problem.boards.length} boards in the rack, {piece.parts.length} parts to make. The plan stays within the
            limits of your <a href={routeTo('shop')}>shop</a>.
          </p>
        )}
      </div>
      {plan && (
        <>
          <PlanShown plan={plan} problem={plan.problem as unknown as BreakdownProblem} names={names} rack={rack} />
          <button type="button" class="button" disabled={running} onClick={start}>
            Plan again
          </button>
        </>
      )}
    </Screen>
  );
}
