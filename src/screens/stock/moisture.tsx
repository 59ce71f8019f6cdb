import { useDraft } from '../../app/draft.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { resultOf } from '../../core/answer/result-of.ts';
import { type DryingState, dryingVerdict } from '../../core/moisture/drying-verdict.ts';
import { equilibriumMoisture } from '../../core/moisture/equilibrium-moisture.ts';
import type { Board } from '../../store/records/board.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { Amount } from '../../ui/amount.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Reason } from '../../ui/reason.tsx';
import { Say } from '../../ui/say.tsx';
import { OptionalNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { badTemperature, degreesSign, fromCelsius, toCelsius } from '../../ui/temperature.ts';
import { correctedReadings } from './corrected-readings.ts';
import { MoistureChart } from './moisture-chart.tsx';
import { moistureTargets, targetById } from './moisture-targets.ts';
import { ReadingEntry } from './reading-entry.tsx';
import { ReadingList } from './reading-list.tsx';

const looks: Record<DryingState, readonly [name: string, look: string]> = {
  'too-wet': ['Too wet to glue', 'now'],
  drying: ['Still drying', 'wait'],
  gaining: ['Too dry yet', 'wait'],
  settling: ['Nearly: not yet steady', 'wait'],
  ready: ['Ready', ''],
};

interface Air {
  readonly celsius?: number;
  readonly humidity?: number;
}

/** Whether the board is dry enough for where the piece will live, from its readings over time. */
export function Moisture({ board }: { board: Board }) {
  const place = useDraft('moisture-target-1', 'most');
  const air = useDraft<Air>('shop-air-1', {});
  if (place.value === undefined || air.value === undefined) return null;
  const target = targetById(place.value);
  const { celsius, humidity } = air.value;
  const equilibrium =
    celsius === undefined || humidity === undefined ? undefined : equilibriumMoisture({ celsius, humidity });
  const holdsAt = isProblem(equilibrium) ? undefined : equilibrium;
  const readings = correctedReadings(board);
  const latest = readings.at(-1);
  const found = dryingVerdict({
    readings,
    target: target.band,
    ...(holdsAt && { equilibrium: holdsAt.value }),
    now: Math.max(Date.now(), latest?.at ?? 0),
  });
  const verdict = isProblem(found) ? undefined : found.value;
  const [name, look] = looks[verdict?.state ?? 'ready'];
  const setAir = (field: keyof Air, value: number | undefined) => air.set(withOptional(air.value ?? {}, field, value));
  return (
    <section class="card" aria-label="Moisture">
      <h2>Is it dry enough?</h2>
      {isProblem(found) ? (
        <Reason of={found} />
      ) : (
        <div class={`answer ${look}`} aria-live="polite">
          <span class="figure words">{name}</span>
          <span>
            <Say phrase={found.value.reason} />
          </span>
          {found.value.state !== 'ready' && (
            <span class="soft">
              <Say phrase={found.value.forecast} />
              {found.value.expectedAt !== undefined && ` About ${day(found.value.expectedAt)}.`}
            </span>
          )}
          <ShowWorking of={found.working} label="What ready means" />
        </div>
      )}
      <MoistureChart readings={readings} band={target.band} expectedAt={verdict?.expectedAt} />
      <Pick
        label="The piece will live"
        value={target.id}
        options={moistureTargets.map(({ id, name }) => ({ value: id, label: name }))}
        onInput={place.set}
      />
      <ReadingEntry boards={[board]} formKey={board.id} />
      <ReadingList board={board} />
      {latest?.working && <ShowWorking of={latest.working} label="The latest reading, corrected" />}
      <details class="working">
        <summary>Air in the shop</summary>
        <div class="fields">
          <OptionalNumber
            label="Temperature"
            hint={degreesSign()}
            value={celsius === undefined ? undefined : fromCelsius(celsius)}
            check={badTemperature}
            onAccept={(typed) => setAir('celsius', typed === undefined ? typed : toCelsius(typed))}
          />
          <OptionalNumber
            label="Humidity"
            hint="%"
            value={humidity}
            check={(typed) => badNumber('', 'The humidity', typed, 'percent', { least: 0, most: 100 })}
            onAccept={(typed) => setAir('humidity', typed)}
          />
        </div>
        {holdsAt && (
          <>
            <p>
              This air holds wood at{' '}
              <b>
                <Amount of={resultOf(holdsAt)} />
              </b>
              .
            </p>
            <ShowWorking of={holdsAt.working} />
          </>
        )}
      </details>
    </section>
  );
}

const day = (at: number) =>
  new Date(at).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' });
