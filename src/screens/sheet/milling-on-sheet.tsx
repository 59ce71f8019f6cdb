import { useMemo } from 'preact/hooks';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { seconds } from '../../core/answer/quantity.ts';
import { followReadings } from '../../core/milling/follow-readings.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { Amount } from '../../ui/amount.tsx';
import { Reason } from '../../ui/reason.tsx';
import { sequenceOf } from '../mill/sequence-of.ts';
import { stepsOfRun } from '../mill/steps-of-run.ts';
import type { SheetRecords } from './read-sheet.ts';
import { SheetPart } from './sheet-part.tsx';
import { SheetSteps } from './sheet-steps.tsx';

/** The milling steps: those of the run, as measured on the way, or those that a run would begin with. */
export function MillingOnSheet({ of: { piece, rack, plan, run } }: { of: SheetRecords }) {
  const steps = useMemo((): Outcome<readonly MillingStep[]> | undefined => {
    if (run) return followReadings(stepsOfRun(run), run.measured ?? []).steps;
    const sequence = plan && sequenceOf(plan, piece, rack);
    return isProblem(sequence) ? sequence : sequence?.steps;
  }, [piece, rack, plan, run]);
  return (
    <SheetPart title="Milling" missing="Not planned yet.">
      {steps &&
        (isProblem(steps) ? (
          <Reason of={steps} />
        ) : (
          <>
            {run && plan && run.planId !== plan.id && <p>Begun on an older plan.</p>}
            <SheetSteps
              steps={steps}
              ticks={run?.ticks ?? {}}
              extra={({ waits }) =>
                waits !== undefined && (
                  <p>
                    Wait <Amount of={seconds(waits)} />.
                  </p>
                )
              }
            />
          </>
        ))}
    </SheetPart>
  );
}
