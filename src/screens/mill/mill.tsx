import { useState } from 'preact/hooks';
import { useAll, useLive, useOne } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { millingSequence } from '../../core/milling/milling-sequence.ts';
import { boards } from '../../store/boards.ts';
import { millings } from '../../store/millings.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import type { Json } from '../../store/records/record.ts';
import { machineLimits, millingPractice } from '../../tables/machine-limits.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { millingInput } from './milling-input.ts';
import { MillingRun } from './milling-run.tsx';

/** In which order to mill, step by step: begins a run for the chosen plan, or goes on with the one begun. */
export default function MillScreen({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const run = useLive(['milling'], async () => newest(await millings.where('pieceId', id)) ?? null, id);
  const plan = useLive(
    ['plan'],
    async () => (await plans.where('pieceId', id)).find(({ chosen }) => chosen) ?? null,
    id,
  );
  const [again, setAgain] = useState(false);
  if (piece === undefined || run === undefined || plan === undefined) return null;
  if (piece === null) {
    return (
      <Screen question="Which piece?" kicker="Mill">
        <p>Milling belongs to a piece and its plan. Begin with the piece.</p>
        <a class="button big now" href={routeTo('piece')}>
          Pieces
        </a>
      </Screen>
    );
  }
  if (run && !again) {
    const outdated = plan !== null && plan.id !== run.planId;
    return <MillingRun run={run} piece={piece} outdated={outdated} onAgain={() => setAgain(true)} />;
  }
  return plan ? <Begin piece={piece} plan={plan} onBegun={() => setAgain(false)} /> : <NoPlan piece={piece} />;
}

const newest = (runs: readonly Milling[]): Milling | undefined => [...runs].sort((a, b) => b.created - a.created)[0];

function NoPlan({ piece }: { piece: Piece }) {
  return (
    <Screen
      question="In which order to mill?"
      kicker={`Mill · ${piece.name}`}
      action={
        <a class="button big now" href={routeTo('breakdown', piece.id)}>
          Plan the cuts first
        </a>
      }
    >
      <p>The steps come from the plan of the cuts, and this piece has none yet.</p>
    </Screen>
  );
}

function Begin({ piece, plan, onBegun }: { piece: Piece; plan: Plan; onBegun(): void }) {
  const rack = useAll(boards);
  const [trouble, setTrouble] = useState<Problem>();
  if (!rack) return null;
  const begin = async () => {
    const steps = millingSequence(millingInput(plan, piece, rack, shop.value, machineLimits, millingPractice));
    if (isProblem(steps)) {
      setTrouble(steps);
      return;
    }
    try {
      await millings.add({ pieceId: piece.id, planId: plan.id, steps: steps as unknown as Json[], ticks: {} });
      onBegun();
    } catch {
      // The shell keeps and shows what the phone did not take.
    }
  };
  return (
    <Screen
      question="In which order to mill?"
      kicker={`Mill · ${piece.name}`}
      action={
        <button type="button" class="button big now" onClick={() => void begin()}>
          Start milling
        </button>
      }
    >
      <p>
        {plan.blanks.length} {plan.blanks.length === 1 ? 'blank' : 'blanks'} to mill, with the machines of your{' '}
        <a href={routeTo('shop')}>shop</a>. The steps are made when you start, and stay as they are.
      </p>
      <p class="caution">
        <span>
          <b>Caution.</b> The machine’s own manual, local rules and trained advice come before anything said here.
        </span>
      </p>
      {trouble && (
        <p class="answer now" role="alert">
          <span>
            <Say phrase={trouble.message} />
          </span>
        </p>
      )}
    </Screen>
  );
}
