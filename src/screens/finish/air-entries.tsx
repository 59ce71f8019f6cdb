import { formatDecimals } from '../../core/answer/format-number.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { celsius, factor, percent } from '../../core/answer/quantity.ts';
import { scaled } from '../../core/answer/range.ts';
import { NumberField } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Say } from '../../ui/say.tsx';
import { sayRange } from '../../ui/say-range.ts';
import { degreesSign, fromCelsius } from '../../ui/temperature.ts';
import type { FormProps } from './form-props.ts';

/** Cold and damp air make every wait longer. */
export function AirEntries({ form, read, field }: FormProps) {
  const { finish, airFactor, air } = read;
  return (
    <section class="card">
      <h2>Today’s air</h2>
      <div class="fields">
        <NumberField
          label="Temperature"
          hint={
            form.celsius ? degreesSign() : `${degreesSign()}; empty: ${formatDecimals(fromCelsius(air.celsius), 1)}`
          }
          {...field('celsius')}
        />
        <NumberField label="Humidity" hint={form.humidity ? '%' : `%; empty: ${air.humidity}`} {...field('humidity')} />
      </div>
      <p aria-live="polite">
        Between coats: <b>{sayRange(scaled(finish.waitSeconds, airFactor), 'seconds')}</b>.
      </p>
      {air.humidity > 65 && (finish.id === 'shellac' || finish.id === 'lacquer-brushed') && (
        <p class="caution">It clouds in damp air. Wait for a drier day.</p>
      )}
      <Fold label="How the wait is worked out">
        <p>
          <Say
            phrase={phrase`Times ${factor(airFactor)}: doubled for each ${factor(fromCelsius(10) - fromCelsius(0))} degrees below ${celsius(20)}; longer above ${percent(50)} humidity, doubled at ${percent(85)}. Never shorter than the can says. An assumption of this app.`}
          />
        </p>
      </Fold>
    </section>
  );
}
