import { formatQuantity } from '../../core/answer/format-quantity.ts';
import { seconds } from '../../core/answer/quantity.ts';
import type { Range } from '../../core/answer/range.ts';
import { TextField } from '../../ui/fields.tsx';
import { units } from '../../ui/units.ts';
import type { CanText } from './finish-form.ts';
import type { FormProps } from './form-props.ts';
import { kindOf } from './read-finish-form.ts';

/** What the can says of its times: it wins over what is usual. */
export function CanEntries({ form, at, change }: FormProps) {
  const kind = kindOf(form);
  const say = ({ least, most }: Range) =>
    [...new Set([least, most])].map((one) => formatQuantity(seconds(one), units.value)).join(' to ');
  const entry = (name: keyof CanText, label: string, unit: string, usual: Range) => (
    <TextField
      label={label}
      hint={`${unit}; usual ${say(usual)}`}
      value={form.can[name]}
      problem={at(name)}
      onInput={(text) => change({ can: { ...form.can, [name]: text } })}
    />
  );
  return (
    <details class="card">
      <summary>What the can says of its times</summary>
      <p class="soft">Left empty, what is usual for this kind holds.</p>
      <div class="fields">
        {entry('wait', 'Between coats', 'hours', kind.waitSeconds)}
        {kind.wipeOffSeconds && entry('wipeOff', 'Wipe off after', 'minutes', kind.wipeOffSeconds)}
        {entry('use', 'Gentle use after', 'days', kind.useAfterSeconds)}
        {entry('cure', 'Full cure after', 'days', kind.cureSeconds)}
      </div>
    </details>
  );
}
