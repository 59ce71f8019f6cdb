import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { seconds } from '../../core/answer/quantity.ts';
import { Amount } from '../../ui/amount.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { hasLearnt } from './glue-pace.ts';
import type { GluePlan } from './plan-glue-up.ts';

/** Time needed against the time that the glue gives, and how to split the work where it is too little. */
export function TimeAnswer({ plan: { time, times } }: { plan: GluePlan }) {
  if (isProblem(time) || isProblem(times)) return null;
  const { fit, openSeconds, closedSeconds } = time.spread.value;
  const { open, closed } = times.value;
  return (
    <>
      <dl class="facts">
        <dt>
          Spread and close; the glue gives <Amount of={seconds(open.least)} />
        </dt>
        <dd>
          <Amount of={seconds(openSeconds)} />
        </dd>
        <dt>
          Set the clamps; the glue gives <Amount of={seconds(closed.least)} />
        </dt>
        <dd>
          <Amount of={seconds(closedSeconds)} />
        </dd>
      </dl>
      {fit !== 'fits' && <Split time={time} />}
      <p class="soft small">
        {hasLearnt(shop.value) ? 'At the pace of your dry runs.' : 'At an unhurried pace. A dry run shows your own.'}
      </p>
      <ShowWorking label="How the time is worked out" of={time.spread.working} />
      <ShowWorking label="How the glue’s times are worked out" of={times.working} />
    </>
  );
}

function Split({ time: { split, slower } }: { time: Exclude<GluePlan['time'], { kind: 'problem' }> }) {
  return (
    <div class="answer now">
      {split && split.length > 1 && (
        <p>
          Glue it in <b>{split.length} stages</b>:{' '}
          {split
            .map(
              (seams, at) => `${at === 0 ? 'first ' : 'then '}${seams.length} ${seams.length === 1 ? 'seam' : 'seams'}`,
            )
            .join(', ')}
          .
        </p>
      )}
      {!split && <p>Splitting does not help: one seam alone, or the clamps, take longer than the glue gives.</p>}
      {slower.length > 0 ? (
        <p>Slow enough for all at once: {slower.map(({ name }) => name).join('; ')}.</p>
      ) : (
        <p>No kind in the list is slow enough at this temperature.</p>
      )}
      <p>A helper who spreads while you close saves half the time.</p>
    </div>
  );
}
