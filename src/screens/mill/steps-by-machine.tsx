import type { MillingStep } from '../../core/milling/milling-step.ts';
import { readyPieces } from '../../core/milling/ready-pieces.ts';
import { isSettled, type Ticks, throughOf } from '../../core/steps/progress.ts';
import { Fold } from '../../ui/fold.tsx';
import { DoneMark } from '../../ui/marks.tsx';
import { Say } from '../../ui/say.tsx';

interface Props {
  steps: readonly MillingStep[];
  ticks: Ticks;
  at: number;
  onAt(at: number): void;
}

/** All steps by machine, with how many pieces wait at each: a machine that is set up takes what is ready for it. */
export function StepsByMachine({ steps, ticks, at, onAt }: Props) {
  const ready = readyPieces(steps, ticks);
  const machines = [...new Set(steps.map(({ machine }) => machine))];
  return (
    <Fold label="All steps by machine">
      {machines.map((machine) => (
        <section key={machine}>
          <h2>At the {machine}</h2>
          <ul class="all-steps">
            {steps.map((step, index) => {
              if (step.machine !== machine) return null;
              const through = throughOf(ticks, step).size;
              const waiting = ready.get(step.id)?.length ?? 0;
              return (
                <li key={step.id}>
                  <button
                    type="button"
                    class="button"
                    aria-current={index === at ? 'step' : undefined}
                    onClick={() => onAt(index)}
                  >
                    <span>
                      {index + 1}. <Say phrase={step.title} />
                    </span>
                    <span class="soft small nowrap">
                      {isSettled(ticks, step) ? (
                        <>
                          <DoneMark />
                          <span class="hidden-visually">done</span>
                        </>
                      ) : (
                        `${through} of ${step.pieces.length}${waiting > 0 ? `, ${waiting} ready` : ''}`
                      )}
                    </span>
                  </button>
                </li>
              );
            })}
          </ul>
        </section>
      ))}
    </Fold>
  );
}
