import { formatQuantity } from '../../core/answer/format-quantity.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { count, m2, mm, seconds, type Unit } from '../../core/answer/quantity.ts';
import { range } from '../../core/answer/range.ts';
import { Amount } from '../../ui/amount.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Say } from '../../ui/say.tsx';
import { sayRange } from '../../ui/say-range.ts';
import { units } from '../../ui/units.ts';
import type { GluePlan, GlueWork } from './plan-glue-up.ts';

const say = (value: number, unit: Unit) => formatQuantity({ value, unit }, units.value);

const fits = { fits: 'Enough time', tight: 'Tight', late: 'Too slow for this glue' } as const;

/** The answer in short: does it fit the open time, how much glue, how many clamps. */
export function PlanAnswer({ plan: { times, work, clamps } }: { plan: GluePlan }) {
  if (isProblem(times)) {
    return (
      <div class="answer now" aria-live="polite">
        <p class="figure words">{times.field === 'celsius' ? 'Don’t glue yet' : 'Check the label'}</p>
        <p>
          <Say phrase={times.message} />
        </p>
      </div>
    );
  }
  const { open, closed } = times.value;
  if (isProblem(work)) {
    return (
      <div class="answer" aria-live="polite">
        <p class="figure words">{sayRange(range(open.least), 'seconds')} open</p>
        <p>Start the clock as it is, or type in the seams.</p>
      </div>
    );
  }
  const { fit, openSeconds, closedSeconds } = work.spread.value;
  const { likelyGrams, likelyMillilitres, areaM2 } = work.amount.value;
  const needed = clamps && !isProblem(clamps) ? clamps.needed.value : undefined;
  return (
    <div class={fit === 'fits' ? 'answer' : 'answer now'} aria-live="polite">
      <p class="figure words">{fits[fit]}</p>
      <Facts
        rows={[
          [`Spread and close; the glue gives ${sayRange(open, 'seconds')}`, seconds(openSeconds)],
          [`Set the clamps; the glue gives ${sayRange(closed, 'seconds')}`, seconds(closedSeconds)],
          ['Glue to pour out', `${say(likelyGrams, 'grams')} · ${say(likelyMillilitres, 'millilitres')}`],
          ['Joint area', m2(areaM2)],
          ...(needed ? ([[every(needed.spacing), count(needed.clamps)]] as const) : []),
        ]}
      />
      {fit !== 'fits' && <Split of={work} />}
    </div>
  );
}

/** How to split the work where the time is too little, or what else helps. */
function Split({ of: { spread, slower } }: { of: GlueWork }) {
  const { split } = spread.value;
  return (
    <p>
      {split
        ? `Glue it in ${split.length} stages, of ${split.join(', ')} seams.`
        : 'Splitting does not help: one seam alone, or the clamps, take too long.'}{' '}
      {slower.length > 0
        ? `Slow enough for all at once: ${slower.map(({ name }) => name).join('; ')}.`
        : 'No glue in the list is slow enough today.'}{' '}
      A helper saves half the time.
    </p>
  );
}

const every = (spacing: number) => (
  <>
    Clamps, every <Amount of={mm(spacing)} />
  </>
);
