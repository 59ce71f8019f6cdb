import { isProblem } from '../../core/answer/problem.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { ClampAnswer } from './clamp-answer.tsx';
import { DryRunCard } from './dry-run.tsx';
import { LabelEntries } from './label-entries.tsx';
import { MoreEntries } from './more-entries.tsx';
import type { GluePlan } from './plan-glue-up.ts';
import type { ReadGlue } from './read-glue-form.ts';
import type { FormProps } from './setup-form.tsx';
import { TimeAnswer } from './time-answer.tsx';

interface Props extends FormProps {
  piece: Piece | undefined;
  read: ReadGlue;
  plan: GluePlan;
}

/** What the answer rests on, and what helps where it isn't enough. */
export function PlanDetails({ piece, read, plan, ...props }: Props) {
  const { form } = props;
  const { amount } = plan;
  return (
    <>
      <LabelEntries {...props} read={read} />
      <ul class="caution">
        {read.adhesive.cautions.map((caution) => (
          <li>
            <Say phrase={caution} />
          </li>
        ))}
      </ul>
      <h2>Clamps</h2>
      <ClampAnswer form={form} read={read} plan={plan} />
      <MoreEntries {...props} first={piece?.parts.map(({ species }) => species) ?? []} />
      {!isProblem(amount) && (
        <>
          <h2>Glue and time</h2>
          <ShowWorking label="How the glue is worked out" of={amount.working} />
          <TimeAnswer plan={plan} />
          <DryRunCard plan={plan} seams={read.seams.length} areaM2={amount.value.areaM2} />
        </>
      )}
    </>
  );
}
