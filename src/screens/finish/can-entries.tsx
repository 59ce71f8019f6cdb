import { useState } from 'preact/hooks';
import { quantity } from '../../core/answer/quantity.ts';
import type { Range } from '../../core/answer/range.ts';
import { Amount } from '../../ui/amount.tsx';
import { NumberField, TextField } from '../../ui/fields.tsx';
import { sayRange } from '../../ui/say-range.ts';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import type { Entry, FormProps } from './form-props.ts';
import { kindOf } from './read-finish-form.ts';

/** What the can says of its times: it wins over what is usual. */
export function CanEntries({ form, read, field }: FormProps) {
  const kind = kindOf(form);
  const { wait, wipeOff, use, cure, solids, film } = form;
  // As it was found: it doesn't fold away under the thumb that empties its last entry.
  const [open] = useState(wait + wipeOff + use + cure + solids + film !== '');
  const entry = (name: Entry, label: string, unit: string, usual: Range) => (
    <TextField label={label} hint={`${unit}; usual ${sayRange(usual, 'seconds')}`} {...field(name)} />
  );
  return (
    <details class="card" open={open}>
      <summary>What else the can says</summary>
      <div class="fields">
        {entry('wait', 'Between coats', 'hours', kind.waitSeconds)}
        {kind.wipeOffSeconds && entry('wipeOff', 'Wipe off after', 'minutes', kind.wipeOffSeconds)}
        {entry('use', 'Gentle use after', 'days', kind.useAfterSeconds)}
        {entry('cure', 'Full cure after', 'days', kind.cureSeconds)}
      </div>
      <h3>No spreading rate on it?</h3>
      <div class="fields">
        <NumberField label="Volume solids" hint="%" {...field('solids')} />
        <NumberField label="Dry film of a coat" hint={units.value.unit === 'in' ? 'mil' : 'µm'} {...field('film')} />
      </div>
      {read.filmRate && (
        <div aria-live="polite">
          <p>
            That makes{' '}
            <b>
              <Amount of={quantity(read.filmRate.value, 'm2PerLitre')} />
            </b>
            {form.rate.trim() !== '' && '; the rate above wins'}.
          </p>
          <ShowWorking of={read.filmRate.working} />
        </div>
      )}
    </details>
  );
}
