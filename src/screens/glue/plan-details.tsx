import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { SayList } from '../../ui/say-list.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { ClampAnswer } from './clamp-answer.tsx';
import { DryRunCard } from './dry-run.tsx';
import { hasLearnt } from './glue-pace.ts';
import { LabelEntries } from './label-entries.tsx';
import { MoreEntries } from './more-entries.tsx';
import type { FormProps } from './setup-form.tsx';

/** What the answer rests on, and what helps where it isn't enough. */
export function PlanDetails(props: FormProps) {
  const { read, plan } = props;
  const { work } = plan;
  return (
    <>
      <LabelEntries {...props} />
      <SayList of={read.adhesive.cautions} look="caution" />
      <h2>Clamps</h2>
      <ClampAnswer {...props} />
      <MoreEntries {...props} />
      {!isProblem(work) && (
        <>
          <h2>Glue and time</h2>
          <ShowWorking label="How the glue is worked out" of={work.amount.working} />
          <p class="soft small">{hasLearnt(shop.value) ? 'At the pace of your dry runs.' : 'At an unhurried pace.'}</p>
          <ShowWorking label="How the time is worked out" of={work.spread.working} />
          <ShowWorking label="How the glue’s times are worked out" of={work.times.working} />
          <DryRunCard plan={plan} seams={read.seams.length} hands={read.hands} areaM2={work.amount.value.areaM2} />
        </>
      )}
    </>
  );
}
