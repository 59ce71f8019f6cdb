import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { celsius as inCelsius, percent as inPercent } from '../../core/answer/quantity.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import type { DryingState } from '../../core/moisture/drying-verdict.ts';
import { boards } from '../../store/boards.ts';
import { latestAir } from '../../store/records/air-now.ts';
import type { Board } from '../../store/records/board.ts';
import { editShop } from '../../store/shop.ts';
import { Amount } from '../../ui/amount.tsx';
import { Card } from '../../ui/card.tsx';
import { day } from '../../ui/day.ts';
import { Pick } from '../../ui/fields.tsx';
import { Reason } from '../../ui/reason.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { dryingIn } from './drying-in.ts';
import { MoistureChart } from './moisture-chart.tsx';
import { moistureTargets } from './moisture-targets.ts';
import { ReadingEntry } from './reading-entry.tsx';
import { ReadingList } from './reading-list.tsx';

const looks: Record<DryingState, readonly [name: string, look: string]> = {
  'too-wet': ['Too wet to glue', 'now'],
  drying: ['Still drying', 'wait'],
  gaining: ['Too dry yet', 'wait'],
  settling: ['Nearly: not yet steady', 'wait'],
  ready: ['Ready', ''],
};

/** Whether the board is dry enough for where the piece will live, from its readings over time. */
export function Moisture({ board }: { board: Board }) {
  const now = Date.now();
  const { target, holdsAt, verdict: judge } = dryingIn(shop.value, now);
  const { readings, found } = judge(board);
  const latest = readings.at(-1);
  const air = latestAir(shop.value);
  const verdict = isProblem(found) ? undefined : found.value;
  const { expectedAt = 0 } = verdict ?? {};
  const [name, look] = looks[verdict?.state ?? 'ready'];
  return (
    <Card title="Is it dry enough?">
      {isProblem(found) ? (
        <Reason of={found} />
      ) : (
        <div class={`answer ${look}`} aria-live="polite">
          <span class="figure words">{name}</span>
          <span>
            <Say phrase={found.value.reason} /> Read {day(found.value.latest.at)}.
          </span>
          {found.value.forecast && (
            <span class="soft">
              <Say phrase={found.value.forecast} />
              {expectedAt > now && ` About ${day(expectedAt)}.`}
            </span>
          )}
          <ShowWorking of={found.working} label="What ready means" />
        </div>
      )}
      <MoistureChart readings={readings} band={target.band} expectedAt={expectedAt} />
      <Pick
        label="The piece will live"
        value={target.id}
        options={moistureTargets.map(({ id, name }) => ({ value: id, label: name }))}
        onInput={(chosen) => editShop((now) => ({ ...now, driedFor: chosen }))}
      />
      <ReadingEntry boards={[board]} formKey={board.id} />
      <ReadingList
        readings={board.readings}
        edit={(change) => boards.edit(board.id, (now) => ({ ...now, readings: change(now.readings) }))}
      >
        {({ percent, celsius }) => (
          <>
            <Amount of={inPercent(percent)} />
            {celsius !== undefined && (
              <>
                {' '}
                at <Amount of={inCelsius(celsius)} />
              </>
            )}
          </>
        )}
      </ReadingList>
      {latest?.working && <ShowWorking of={latest.working} label="Latest reading, corrected" />}
      {holdsAt && (
        <p>
          The air in the shop holds wood at{' '}
          <b>
            <Amount of={resultOf(holdsAt)} />
          </b>
          {air && `, last read ${day(air.at)}`}.
        </p>
      )}
      {holdsAt && <ShowWorking of={holdsAt.working} />}
      <a class="button" href={routeTo('stock', 'air')}>
        Air in the shop
      </a>
    </Card>
  );
}
