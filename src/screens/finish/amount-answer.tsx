import { litres, m2, money } from '../../core/answer/quantity.ts';
import { m2PerSquareFoot } from '../../core/answer/us-units.ts';
import type { Purchase } from '../../core/finishing/choose-containers.ts';
import { Amount } from '../../ui/amount.tsx';
import { type Fact, Facts } from '../../ui/facts.tsx';
import { howMany } from '../../ui/how-many.ts';
import { sayRange } from '../../ui/say-range.ts';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import type { FinishPlan } from './plan-finish.ts';
import type { ReadFinish } from './read-finish-form.ts';

const keepsUntil = (seconds: number) =>
  new Date(Date.now() + seconds * 1000).toLocaleDateString([], { month: 'long', year: 'numeric' });

/** How much is likely, between what and what, which cans hold it and what they cost. */
export function AmountAnswer({ plan, read }: { plan: FinishPlan; read: ReadFinish }) {
  const { amount, area, coated, coatedM2, purchase: bought, costPerM2 } = plan;
  const { coats, total } = amount.value;
  const perFoot = units.value.unit === 'in';
  const rows: Fact[] = [
    ['Area that gets finish', m2(coatedM2)],
    ...(coated.length > 1 ? coated : []).map(({ what, areaM2 }): Fact => [`of it ${what}`, m2(areaM2)]),
    ...coats.map(({ likely }, index): Fact => [`Coat ${index + 1}`, litres(likely)]),
  ];
  if (costPerM2)
    rows.push([`Cost of one square ${perFoot ? 'foot' : 'metre'}`, money(costPerM2 * (perFoot ? m2PerSquareFoot : 1))]);
  return (
    <>
      <div class="answer">
        <span class="soft">Likely, in {howMany(coats.length, 'coat')}</span>
        <span class="figure">
          <Amount of={litres(total.likely)} />
        </span>
        {total.least < total.most && <span class="soft">{sayRange(total, 'litres')}, as the wood drinks</span>}
        <span class="soft">
          At {sayRange(read.finish.coverage, 'm2PerLitre')}
          {read.label.coverage ? ', as the can says' : ', usual for this kind'}
        </span>
        {bought && <Bought of={bought.value} keepsSeconds={read.finish.keepsSeconds.least} />}
        <ShowWorking of={amount.working} />
      </div>
      <Facts rows={rows} />
      <div>
        <ShowWorking of={area.working} label="How the area is worked out" />
        {bought && <ShowWorking of={bought.working} label="Why these cans" />}
      </div>
    </>
  );
}

function Bought({ of: { buy, cost, left }, keepsSeconds }: { of: Purchase; keepsSeconds: number }) {
  if (buy.length === 0)
    return (
      <p>
        <b>Enough on the shelf.</b>
      </p>
    );
  return (
    <p>
      <b>
        Buy{' '}
        {buy.map((can, index) => (
          <>
            {index > 0 && ', '}
            {can.count} × <Amount of={litres(can.litres)} />
          </>
        ))}
      </b>{' '}
      for <Amount of={money(cost)} />; <Amount of={litres(left)} /> left over.
      {left > 0.001 && (
        <span class="soft"> Kept full and shut, good until {keepsUntil(keepsSeconds)} at least (common practice).</span>
      )}
    </p>
  );
}
