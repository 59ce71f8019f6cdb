import { celsius, percent } from '../../core/answer/quantity.ts';
import { scaled } from '../../core/answer/range.ts';
import { Amount } from '../../ui/amount.tsx';
import { Card } from '../../ui/card.tsx';
import { NumberField } from '../../ui/fields.tsx';
import { sayRange } from '../../ui/say-range.ts';
import { ShowWorking } from '../../ui/show-working.tsx';
import { degreesSign } from '../../ui/temperature.ts';
import type { FormProps } from './form-props.ts';

/** Cold and damp air make every wait longer. */
export function AirEntries({ read: { finish, airFactor, air }, at, field }: FormProps) {
  return (
    <Card title="Today’s air">
      <div class="fields">
        <NumberField label="Temperature" hint={degreesSign()} {...field('celsius')} />
        <NumberField label="Humidity" hint="%" {...field('humidity')} />
      </div>
      <p aria-live="polite">
        Between coats, at <Amount of={celsius(air.celsius)} /> and <Amount of={percent(air.humidity)} />:{' '}
        <b>
          {at('celsius') || at('humidity') ? '–' : sayRange(scaled(finish.waitSeconds, airFactor.value), 'seconds')}
        </b>
        .
      </p>
      {air.humidity > 65 && (finish.id === 'shellac' || finish.id === 'lacquer-brushed') && (
        <p class="caution">It clouds in damp air. Wait for a drier day.</p>
      )}
      <ShowWorking of={airFactor.working} label="How the wait is worked out" />
    </Card>
  );
}
