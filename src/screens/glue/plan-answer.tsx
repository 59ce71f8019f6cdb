import { isProblem } from '../../core/answer/problem.ts';
import { m2, mm, seconds } from '../../core/answer/quantity.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import type { GluePlan } from './plan-glue-up.ts';

const fits = { fits: 'Enough time', tight: 'Tight', late: 'Too slow for this glue' } as const;

/** Glue is weighed on a kitchen scale, in grams whatever the tape says: an ounce is too coarse for it. */
const weighed = (value: number, sign: string) =>
  `${value < 10 ? Math.round(value * 10) / 10 : Math.round(value)} ${sign}`;

/** The answer in short: does it fit the open time, how much glue, how many clamps. */
export function PlanAnswer({ plan: { times, amount, clamps, time } }: { plan: GluePlan }) {
  if (isProblem(times)) {
    return (
      <div class="answer now" aria-live="polite">
        <p class="figure words">{times.field === 'celsius' ? "Don't glue yet" : 'Check the label'}</p>
        <p>
          <Say phrase={times.message} />
        </p>
      </div>
    );
  }
  if (isProblem(amount) || isProblem(time)) {
    return (
      <div class="answer" aria-live="polite">
        <p class="figure words">
          <Amount of={seconds(times.value.open.least)} /> open
        </p>
        <p>Start the clock as it is, or type in the seams for glue and clamps.</p>
      </div>
    );
  }
  const { fit, openSeconds } = time.spread.value;
  const count = clamps && !isProblem(clamps) ? clamps.needed.value : undefined;
  return (
    <div class={fit === 'fits' ? 'answer' : 'answer now'} aria-live="polite">
      <p>
        <span class="figure words">{fits[fit]}</span>
        <br />
        <Amount of={seconds(openSeconds)} /> to spread and close; the glue stays open{' '}
        <Amount of={seconds(times.value.open.least)} /> to <Amount of={seconds(times.value.open.most)} />.
      </p>
      <dl class="facts">
        <dt>Glue to pour out</dt>
        <dd>
          {weighed(amount.value.likelyGrams, 'g')} · {weighed(amount.value.likelyMillilitres, 'ml')}
        </dd>
        <dt>Joint area</dt>
        <dd>
          <Amount of={m2(amount.value.areaM2)} />
        </dd>
        {count && (
          <>
            <dt>Clamps</dt>
            <dd>
              {count.clamps}, every <Amount of={mm(count.spacing)} />
            </dd>
          </>
        )}
      </dl>
    </div>
  );
}
