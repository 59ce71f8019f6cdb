import { useDraft } from '../../app/draft.ts';
import { useLive } from '../../app/live.ts';
import { useNow } from '../../app/now.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { busiest } from '../../core/gluing/busiest.ts';
import { dayPlan } from '../../core/gluing/day-plan.ts';
import { glueups } from '../../store/glueups.ts';
import { millings } from '../../store/millings.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import { airNow } from '../../store/records/air-now.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { SettledNumber } from '../../ui/settled.tsx';
import { ClampTrouble } from './clamp-trouble.tsx';
import { clampsOwned, dayStages, shopHours } from './day-stages.ts';
import { Timeline } from './timeline.tsx';

interface Hours {
  readonly from: number;
  readonly until: number;
}

const minute = 60_000;

const readAll = async () => ({
  pieces: await pieces.all(),
  plans: await plans.all(),
  millings: await millings.all(),
  glueups: await glueups.all(),
});

/** Every glue-up still to come, along the clock: one pair of hands, the clamps there are, and every wait kept. */
export function DayPlanScreen() {
  const read = useLive(['piece', 'plan', 'milling', 'glueup'], readAll);
  const hours = useDraft<Hours>('glue-shop-hours-1', { from: 8, until: 18 });
  // The plan moves with the clock, but not at every second.
  const now = Math.floor(useNow() / minute) * minute;
  if (!read || !hours.value) return null;
  const { from, until } = hours.value;
  const owned = clampsOwned(shop.value);
  const { stages, running, short, refused } = dayStages({
    ...read,
    shop: shop.value,
    celsius: airNow(shop.value, now)?.celsius,
    now,
  });
  const day = { stages, running, start: now, windows: shopHours(now, from, until) };
  const plan = dayPlan({ ...day, clampsOwned: owned });
  // Without a limit on clamps: what would be spoken for twice.
  const rushed = dayPlan({ ...day, clampsOwned: 1000 });
  const trouble = refused ?? (isProblem(plan) ? plan : undefined);
  const worst = isProblem(rushed) ? undefined : busiest(rushed);
  const hour = (label: string, value: number, least: number, most: number, accept: (value: number) => void) => (
    <SettledNumber
      label={label}
      hint="h"
      value={value}
      unit="count"
      limits={{ least, most, whole: true }}
      onAccept={accept}
    />
  );
  return (
    <Screen
      question="What can be glued when?"
      kicker="Glue-up"
      action={
        <a class="button big now" href={routeTo('glue')}>
          All glue-ups
        </a>
      }
    >
      {trouble && (
        <div class="answer now">
          <p>
            <Say phrase={trouble.message} />
          </p>
        </div>
      )}
      {!isProblem(plan) && plan.length > 0 && (
        <Timeline times={plan} running={new Set(running.map(({ id }) => id))} now={now} />
      )}
      {stages.length + running.length === 0 && !trouble && (
        <p class="answer">
          <span class="figure words">Nothing to glue</span>
          <span>Glue-ups of your pieces come here in their order.</span>
        </p>
      )}
      <ClampTrouble short={short} worst={worst} owned={owned} now={now} />
      <h2>In the shop</h2>
      <div class="fields">
        {hour('From', from, 0, until - 1, (value) => hours.set({ from: value, until }))}
        {hour('Until', until, from + 1, 24, (value) => hours.set({ from, until: value }))}
      </div>
      <p class="soft small">
        With your last glue in today’s air, alone, at your pace. Glue sets outside these hours too.
      </p>
    </Screen>
  );
}
