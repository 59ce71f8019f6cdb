import { phrase } from '../../core/answer/phrase.ts';
import { celsius, factor, percent } from '../../core/answer/quantity.ts';
import { scaled } from '../../core/answer/range.ts';
import { NumberField } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { units } from '../../ui/units.ts';
import type { FormProps } from './form-props.ts';
import { usualRange } from './usual-range.ts';

/** Cold and damp air make every wait longer. */
export function AirEntries({ form, read, at, change }: FormProps) {
  const { finish, airFactor, air } = read;
  return (
    <section class="card">
      <h2>Today’s air</h2>
      <div class="fields">
        <NumberField
          label="Temperature"
          hint={units.value.unit === 'in' ? '°F; empty: 68' : '°C; empty: 20'}
          value={form.celsius}
          problem={at('celsius')}
          onInput={(text) => change({ celsius: text })}
        />
        <NumberField
          label="Humidity"
          hint="%; empty: 50"
          value={form.humidity}
          problem={at('humidity')}
          onInput={(humidity) => change({ humidity })}
        />
      </div>
      <p aria-live="polite">
        Between coats: <b>{usualRange(scaled(finish.waitSeconds, airFactor), 'seconds')}</b>.
      </p>
      {air.humidity > 65 && (finish.id === 'shellac' || finish.id === 'lacquer-brushed') && (
        <p class="caution">It clouds in damp air. Wait for a drier day.</p>
      )}
      <details class="working">
        <summary>How the wait is worked out</summary>
        <p>
          <Say
            phrase={phrase(
              'Times {factor}: twice as long for each {step} degrees below {warm}, and longer above {dry} humidity, up to twice at {damp}. Never shorter than the can says. This rule is an assumption of this app.',
              {
                factor: factor(airFactor),
                step: units.value.unit === 'in' ? factor(18) : factor(10),
                warm: celsius(20),
                dry: percent(50),
                damp: percent(85),
              },
            )}
          />
        </p>
      </details>
    </section>
  );
}
