import { useDraft } from '../../app/draft.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { percent } from '../../core/answer/quantity.ts';
import { type DryingState, dryingVerdict } from '../../core/moisture/drying-verdict.ts';
import { equilibriumMoisture } from '../../core/moisture/equilibrium-moisture.ts';
import { temperatureCorrection } from '../../core/moisture/temperature-correction.ts';
import type { Board } from '../../store/records/board.ts';
import { Amount } from '../../ui/amount.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { OptionalNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { correctedReadings } from './corrected-readings.ts';
import { MoistureChart } from './moisture-chart.tsx';
import { moistureTargets, targetById } from './moisture-targets.ts';
import { ReadingEntry } from './reading-entry.tsx';
import { ReadingList } from './reading-list.tsx';
import { degreesSign, fromCelsius, toCelsius } from './temperature.ts';

const looks: Record<DryingState, { name: string; class: string }> = {
  'too-wet': { name: 'Too wet to glue', class: 'answer now' },
  drying: { name: 'Still drying', class: 'answer wait' },
  gaining: { name: 'Too dry yet', class: 'answer wait' },
  settling: { name: 'Nearly: not yet steady', class: 'answer wait' },
  ready: { name: 'Ready', class: 'answer' },
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
  const holdsAt = equilibrium === undefined || isProblem(equilibrium) ? undefined : equilibrium;
  const readings = correctedReadings(board.readings ?? []);
  const verdict = dryingVerdict({
    readings,
    target: target.band,
    ...(holdsAt && { equilibrium: holdsAt.value }),
    now: Math.max(Date.now(), readings.at(-1)?.at ?? 0),
  });
  const newest = board.readings?.toSorted((a, b) => a.at - b.at).at(-1);
  const correction =
    newest?.celsius === undefined
      ? undefined
      : temperatureCorrection({ percent: newest.percent, celsius: newest.celsius });
  return (
    <section class="card" aria-label="Moisture">
      <h2>Is it dry enough?</h2>
      {isProblem(verdict) ? (
        <p class="soft">
          <Say phrase={verdict.message} />
        </p>
      ) : (
        <div class={looks[verdict.value.state].class} aria-live="polite">
          <span class="figure words">{looks[verdict.value.state].name}</span>
          <span>
            <Say phrase={verdict.value.reason} />
          </span>
          {verdict.value.state !== 'ready' && (
            <span class="soft">
              <Say phrase={verdict.value.forecast} />
              {verdict.value.expectedAt !== undefined && ` About ${day(verdict.value.expectedAt)}.`}
            </span>
          )}
          <ShowWorking of={verdict.working} label="What ready means" />
        </div>
      )}
      {readings.length > 0 && (
        <MoistureChart
          readings={readings}
          band={target.band}
          expectedAt={isProblem(verdict) ? undefined : verdict.value.expectedAt}
        />
      )}
      <Pick
        label="The piece will live"
        value={target.id}
        options={moistureTargets.map(({ id, name }) => ({ value: id, label: name }))}
        onInput={place.set}
      />
      <ReadingEntry boards={[board]} formKey={board.id} />
      <ReadingList board={board} />
      {correction !== undefined && !isProblem(correction) && (
        <ShowWorking of={correction.working} label="The latest reading, corrected" />
      )}
      <details class="working">
        <summary>Air in the shop</summary>
        <div class="fields">
          <OptionalNumber
            label="Temperature"
            hint={degreesSign()}
            value={celsius === undefined ? undefined : fromCelsius(celsius)}
            check={(typed) => badNumber('', 'The temperature', toCelsius(typed), 'celsius', { least: -20, most: 60 })}
            onAccept={(typed) => air.set(airWith(air.value, 'celsius', typed === undefined ? typed : toCelsius(typed)))}
          />
          <OptionalNumber
            label="Humidity"
            hint="%"
            value={humidity}
            check={(typed) => badNumber('', 'The humidity', typed, 'percent', { least: 0, most: 100 })}
            onAccept={(typed) => air.set(airWith(air.value, 'humidity', typed))}
          />
        </div>
        {holdsAt && (
          <>
            <p>
              This air holds wood at{' '}
              <b>
                <Amount of={percent(holdsAt.value)} />
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

function airWith(air: Air | undefined, field: keyof Air, value: number | undefined): Air {
  const { [field]: _, ...rest } = air ?? {};
  return value === undefined ? rest : { ...rest, [field]: value };
}

const day = (at: number) =>
  new Date(at).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' });
