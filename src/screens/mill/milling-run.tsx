import { useState } from 'preact/hooks';
import { useFlow } from '../../app/flow.ts';
import { routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { nextOpen, skipStep, type Ticks, through, tickAll, tickPieces } from '../../core/steps/progress.ts';
import { millings } from '../../store/millings.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { FlowStep } from '../../ui/steps/flow-step.ts';
import { StepFlow } from '../../ui/steps/step-flow.tsx';

interface Props {
  run: Milling;
  piece: Piece;
  /** There is a newer plan than the one this run follows. */
  outdated: boolean;
  onAgain(): void;
}

/** A run, one step at a time; where it stands is on the phone after every tick. */
export function MillingRun({ run, piece, outdated, onAgain }: Props) {
  useFlow();
  const steps = run.steps as unknown as readonly MillingStep[];
  const [at, setAt] = useState(() => Math.min(nextOpen(steps, run.ticks), steps.length - 1));

  const change = (edit: (ticks: Ticks) => Ticks) =>
    void millings
      .change(run.id, (now) => {
        const { finishedAt: _, ...open } = now;
        const ticks = edit(now.ticks);
        return nextOpen(steps, ticks) === steps.length
          ? { ...open, ticks, finishedAt: Date.now() }
          : { ...open, ticks };
      })
      // The shell keeps and shows what the phone did not take.
      .catch(() => {});

  return (
    <StepFlow
      kicker={`Mill · ${piece.name}`}
      steps={steps}
      at={at}
      onAt={setAt}
      through={(step) => through(run.ticks, step)}
      skipped={(step: FlowStep) => run.ticks[step.id]?.skipped}
      onTick={(step, ids, on) => change((ticks) => tickPieces(ticks, step, ids, on, Date.now()))}
      onDone={(step) => change((ticks) => tickAll(ticks, step, Date.now()))}
      onSkip={(step, reason) =>
        change((ticks) => {
          const after = skipStep(ticks, step, reason, Date.now());
          return isProblem(after) ? ticks : after;
        })
      }
    >
      {run.finishedAt !== undefined && (
        <p class="answer">
          <span class="figure words">All milled</span>
          <a class="button" href={routeTo('glue', piece.id)}>
            Glue up
          </a>
        </p>
      )}
      {(outdated || run.finishedAt !== undefined) && (
        <p>
          {outdated && 'There is a newer plan than the one these steps follow. '}
          <button type="button" class="button" onClick={onAgain}>
            Begin a new run
          </button>
        </p>
      )}
    </StepFlow>
  );
}
