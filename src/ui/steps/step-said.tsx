import { Length } from '../length.tsx';
import { Say } from '../say.tsx';
import type { FlowStep } from './flow-step.ts';

/** What is to be done in one step: where, and to which size. */
export function StepSaid({ of: step }: { of: FlowStep }) {
  return (
    <>
      {step.machine && <p class="kicker">At the {step.machine}</p>}
      <h2>
        <Say phrase={step.title} />
      </h2>
      <p class="todo">
        <Say phrase={step.todo} />
      </p>
      <StepTarget of={step.target} />
    </>
  );
}

function StepTarget({ of: target }: { of: FlowStep['target'] }) {
  if (!target) return null;
  const tolerance = (
    <span class="soft small">
      give or take <Length mm={target.tolerance} />
    </span>
  );
  if (target.value === undefined) {
    return (
      <p class="soft">
        Each piece to its own {target.dimension}, {tolerance}.
      </p>
    );
  }
  return (
    <p class="answer">
      <span class="soft">{target.dimension}</span>
      <span class="figure">
        <Length mm={target.value} />
      </span>
      {tolerance}
    </p>
  );
}
