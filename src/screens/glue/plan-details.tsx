import { isProblem } from '../../core/answer/problem.ts';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import type { GluePlan } from './plan-glue-up.ts';
import type { ReadGlue } from './read-glue-form.ts';
import type { FormProps } from './setup-form.tsx';

interface Props extends FormProps {
  read: ReadGlue;
  plan: GluePlan;
}

/** What the answer rests on, and what helps where it isn't enough. */
export function PlanDetails({ read, plan: { times, amount, clamps, time } }: Props) {
  return (
    <>
      {!isProblem(time) && <ShowWorking label="How the time is worked out" of={time.spread.working} />}
      {!isProblem(amount) && <ShowWorking label="How the glue is worked out" of={amount.working} />}
      {!isProblem(times) && <ShowWorking label="How the glue’s times are worked out" of={times.working} />}
      {clamps && !isProblem(clamps) && (
        <>
          <ShowWorking label="How the pressure is worked out" of={clamps.pressure.working} />
          <ShowWorking label="How the clamps are worked out" of={clamps.needed.working} />
        </>
      )}
      <ul class="caution">
        {read.adhesive.cautions.map((caution) => (
          <li>
            <Say phrase={caution} />
          </li>
        ))}
      </ul>
    </>
  );
}
