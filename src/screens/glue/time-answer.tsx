import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { ShowWorking } from '../../ui/show-working.tsx';
import { hasLearnt } from './glue-pace.ts';
import type { GluePlan, TimePlan } from './plan-glue-up.ts';

/** What the time rests on, and how to split the work where it is too little. */
export function TimeAnswer({ plan: { time, times } }: { plan: GluePlan }) {
  if (isProblem(time) || isProblem(times)) return null;
  return (
    <>
      {time.spread.value.fit !== 'fits' && <Split time={time} />}
      <p class="soft small">{hasLearnt(shop.value) ? 'At the pace of your dry runs.' : 'At an unhurried pace.'}</p>
      <ShowWorking label="How the time is worked out" of={time.spread.working} />
      <ShowWorking label="How the glue’s times are worked out" of={times.working} />
    </>
  );
}

function Split({ time: { spread, slower } }: { time: TimePlan }) {
  const { split } = spread.value;
  return (
    <div class="answer now">
      <p>
        {split ? (
          <>
            Glue it in <b>{split.length} stages</b>, of {split.join(', ')} seams.
          </>
        ) : (
          'Splitting does not help: one seam alone, or the clamps, take too long.'
        )}
      </p>
      <p>
        {slower.length > 0
          ? `Slow enough for all at once: ${slower.map(({ name }) => name).join('; ')}.`
          : 'No glue in the list is slow enough today.'}{' '}
        A helper saves half the time.
      </p>
    </div>
  );
}
