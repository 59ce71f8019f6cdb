import { useMemo } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { useFlow } from '../../app/flow.ts';
import { useLive } from '../../app/live.ts';
import { leaveNotices } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { followReadings } from '../../core/milling/follow-readings.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { thicknessBudget } from '../../core/milling/thickness-budget.ts';
import { nextPlace } from '../../core/steps/progress.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { withTicks } from '../../store/records/with-ticks.ts';
import { timers } from '../../store/timers.ts';
import { Button } from '../../ui/button.tsx';
import { StepFlow, type TicksEdit } from '../../ui/steps/step-flow.tsx';
import { Budgets } from './budget.tsx';
import { MeasureEntry } from './measure-entry.tsx';
import './mill.css';
import { NewPlan } from './new-plan.tsx';
import { placeKey } from './place-key.ts';
import { RestTimer } from './rest-timer.tsx';
import { SpoiltEntry } from './spoilt-entry.tsx';
import { StepsByMachine } from './steps-by-machine.tsx';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';
import { StockCard } from './stock-card.tsx';
import { changeRun } from './store-progress.ts';

interface Props {
  run: Milling;
  piece: Piece;
  /** The plan that is chosen now, which may be newer than the one that the run follows. */
  plan: Plan | undefined;
  /** The maker has seen enough of the steps of a finished run. */
  onFinished(): void;
}

/** Where a thin blank shows itself, and can still be helped. */
const budgetStages: readonly MillingStep['stage'][] = ['decide', 'rip rough', 'first flattening', 'face'];

/** A run, one step at a time; where it stands is on the phone after every tick. */
export function MillingRun({ run, piece, plan, onFinished }: Props) {
  useFlow();
  const place = useDraft(placeKey(run.id), '');
  const waits = useLive(['timer'], () => timers.where('for.id', run.id), run.id);
  const budgets = useMemo(() => thicknessBudget(inputOfRun(run)), [run.planId]);
  if (place.value === undefined || !waits) return null;
  const { steps, readings } = followReadings(stepsOfRun(run), run.measured ?? []);
  const left = steps.findIndex(({ id }) => id === place.value);
  const at = left < 0 ? nextPlace(run.ticks, steps) : left;

  const keep = (_: MillingStep, edit: TicksEdit) => {
    const now = Date.now();
    // The shell keeps and shows what the phone did not take.
    void changeRun(run.id, (record) => withTicks(record, edit(record.ticks, now), now)).catch(() => {});
  };
  const goTo = (next: number) => {
    place.set(steps[next]?.id ?? '');
    leaveNotices();
  };

  return (
    <StepFlow
      kicker={`Mill · ${piece.name}`}
      steps={steps}
      ticks={run.ticks}
      at={at}
      onAt={goTo}
      onTicks={keep}
      extra={(step) => {
        const scarce = isProblem(budgets) || !budgetStages.includes(step.stage) ? [] : budgets;
        const here = scarce.filter((budget) => step.pieces.some(({ id }) => id === budget.id));
        return (
          <>
            {step.waits !== undefined && <RestTimer run={run} piece={piece} step={step} timers={waits} />}
            {step.target && <MeasureEntry key={step.id} run={run} step={step} steps={steps} readings={readings} />}
            {here.length > 0 && <Budgets of={here} />}
            {step.machine === 'clamps' && (
              <a class="button" href={routeTo('glue', piece.id)}>
                Glue, time and clamps
              </a>
            )}
            {step.stage === 'crosscut rough' && <StockCard run={run} />}
          </>
        );
      }}
    >
      <SpoiltEntry key={steps[at]?.id ?? ''} run={run} step={steps[at] as MillingStep} />
      <StepsByMachine key={at} steps={steps} ticks={run.ticks} at={at} onAt={goTo} />
      {plan && plan.id !== run.planId && <NewPlan run={run} piece={piece} plan={plan} onBegun={() => place.set('')} />}
      {run.finishedAt !== undefined && (
        <Button look="big" onClick={onFinished}>
          What it came to
        </Button>
      )}
    </StepFlow>
  );
}
