import { shop } from '../../app/shop.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { percent } from '../../core/answer/quantity.ts';
import type { Worked } from '../../core/answer/worked.ts';
import type { Air } from '../../core/moisture/equilibrium-moisture.ts';
import { moistureProblem } from '../../core/moisture/moisture-problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { changeShop } from '../../store/shop.ts';
import { climates } from '../../tables/climates.ts';
import { Amount } from '../../ui/amount.tsx';
import { Pick } from '../../ui/fields.tsx';
import { SettledNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { climateOfShop, presetOf } from './climate-of-shop.ts';
import { TemperatureField } from './temperature-field.tsx';

interface Props {
  piece: Piece;
  seasons: Outcome<Worked<Seasons>>;
}

/** Where the piece will live, and what its wood reads today: what every verdict rests on. */
export function SeasonsCard({ piece, seasons }: Props) {
  const climate = climateOfShop(shop.value);
  const preset = presetOf(climate);
  // A write that fails is kept and shown by the shell.
  const setClimate = (part: { dry?: Partial<Air>; wet?: Partial<Air> }) =>
    void changeShop((now) => {
      const { dry, wet } = climateOfShop(now);
      return { ...now, climate: { dry: { ...dry, ...part.dry }, damp: { ...wet, ...part.wet } } };
    }).catch(() => {});
  const setReading = (reading: number) =>
    void pieces.change(piece.id, (now) => ({ ...now, reading: { at: Date.now(), percent: reading } })).catch(() => {});
  const today = isProblem(seasons) ? (piece.reading?.percent ?? 8) : seasons.value.today;
  return (
    <section class="task" aria-label="Seasons">
      <h2>Moisture through the year</h2>
      {isProblem(seasons) ? (
        <Trouble of={seasons} />
      ) : (
        <>
          <dl class="facts" aria-live="polite">
            <dt>Today{piece.reading ? '' : ', assumed'}</dt>
            <dd>
              <Amount of={percent(seasons.value.today)} />
            </dd>
            <dt>Dry season</dt>
            <dd>
              <Amount of={percent(seasons.value.dry)} />
            </dd>
            <dt>Damp season</dt>
            <dd>
              <Amount of={percent(seasons.value.wet)} />
            </dd>
          </dl>
          <ShowWorking of={seasons.working} />
        </>
      )}
      <SettledNumber
        label="What the wood reads today"
        hint="% moisture"
        value={today}
        check={(value) => moistureProblem('', value)}
        onAccept={setReading}
      />
      <Pick
        label="Where it will live"
        value={preset}
        options={[
          ...climates.map(({ id, name }) => ({ value: id, label: name })),
          ...(preset === '' ? [{ value: '', label: 'As typed below' }] : []),
        ]}
        onInput={(id) => {
          const chosen = climates.find((one) => one.id === id);
          if (chosen) setClimate(chosen);
        }}
      />
      <details class="working">
        <summary>The air there</summary>
        <p class="soft small">
          The places are assumptions to start from. A hygrometer in the room for a year is better.
        </p>
        <div class="fields">
          <TemperatureField
            label="Dry season"
            celsius={climate.dry.celsius}
            onAccept={(celsius) => setClimate({ dry: { celsius } })}
          />
          <HumidityField
            label="Dry season humidity"
            value={climate.dry.humidity}
            onAccept={(humidity) => setClimate({ dry: { humidity } })}
          />
          <TemperatureField
            label="Damp season"
            celsius={climate.wet.celsius}
            onAccept={(celsius) => setClimate({ wet: { celsius } })}
          />
          <HumidityField
            label="Damp season humidity"
            value={climate.wet.humidity}
            onAccept={(humidity) => setClimate({ wet: { humidity } })}
          />
        </div>
      </details>
    </section>
  );
}

function HumidityField(props: { label: string; value: number; onAccept(value: number): void }) {
  return (
    <SettledNumber
      hint="%"
      check={(value) => badNumber('', 'The relative humidity', value, 'percent', { least: 0, most: 100 })}
      {...props}
    />
  );
}
