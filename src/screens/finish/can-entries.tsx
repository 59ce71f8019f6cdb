import type { Range } from '../../core/answer/range.ts';
import { TextField } from '../../ui/fields.tsx';
import type { CanText } from './finish-form.ts';
import type { FormProps } from './form-props.ts';
import { kindOf } from './read-finish-form.ts';
import { usualRange } from './usual-range.ts';

/** What the can says of its times: it wins over what is usual. */
export function CanEntries({ form, at, change }: FormProps) {
  const kind = kindOf(form);
  const open = (['wait', 'wipeOff', 'use', 'cure'] as const).some((name) => form.can[name] !== '');
  const entry = (name: keyof CanText, label: string, unit: string, usual: Range) => (
    <TextField
      label={label}
      hint={`${unit}; usual ${usualRange(usual, 'seconds')}`}
      value={form.can[name]}
      problem={at(name)}
      onInput={(text) => change({ can: { ...form.can, [name]: text } })}
    />
  );
  return (
    <details class="card" open={open}>
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
