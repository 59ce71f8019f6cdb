import { useState } from 'preact/hooks';
import { useFlow } from '../../app/flow.ts';
import { routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { isThrough, nextPlace, skip, type Ticks, throughOf, tick, tickAll, untick } from '../../core/steps/progress.ts';
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
  const [at, setAt] = useState(() => nextPlace(run.ticks, steps));

  const change = (edit: (ticks: Ticks) => Ticks) =>
    void millings
      .change(run.id, (now) => {
        const { finishedAt: _, ...open } = now;
        const ticks = edit(now.ticks);
        return isThrough(ticks, steps) ? { ...open, ticks, finishedAt: Date.now() } : { ...open, ticks };
      })
      // The shell keeps and shows what the phone did not take.
      .catch(() => {});

  return (
    <StepFlow
      kicker={`Mill · ${piece.name}`}
      steps={steps}
      at={at}
      onAt={setAt}
      through={(step) => throughOf(run.ticks, step)}
      skipped={(step: FlowStep) => run.ticks[step.id]?.skipped}
      onTick={(step, ids, on) => change((ticks) => ids.reduce((now, id) => ticked(now, step, id, on), ticks))}
      onDone={(step) => change((ticks) => tickAll(ticks, step, Date.now()))}
      onSkip={(step, reason) =>
        change((ticks) => {
          const after = skip(ticks, step, reason, Date.now());
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

function ticked(ticks: Ticks, step: FlowStep, piece: string, on: boolean): Ticks {
  if (!on) return untick(ticks, step, piece);
  const after = tick(ticks, step, piece, Date.now());
  return isProblem(after) ? ticks : after;
}
