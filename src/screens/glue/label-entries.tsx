import { useState } from 'preact/hooks';
import { adhesivePhases, phaseNames } from '../../core/gluing/adhesive.ts';
import { NumberField, TextField } from '../../ui/fields.tsx';
import { degreesSign, fromCelsius } from '../../ui/temperature.ts';
import type { LabelEntry } from './glue-form.ts';
import { labelText, labelUnits } from './label-times.ts';
import type { FormProps } from './setup-form.tsx';

/** What the label says: it goes before the table, and is kept for this kind. */
export function LabelEntries({ form: { label }, change, trouble, read: { adhesive } }: FormProps) {
  const entry = (name: LabelEntry, field: string = name) => ({
    value: label[name] ?? '',
    problem: trouble(`label.${field}`),
    onInput: (text: string) => change({ label: { ...label, [name]: text } }),
  });
  const typed = Object.values(label).filter((text) => text.trim() !== '').length;
  // As it was found: it doesn't fold away under the thumb that empties its last entry.
  const [open] = useState(typed > 0);
  return (
    <details class="card" open={open}>
      <summary>What the label says{typed > 0 && ` (${typed} typed in)`}</summary>
      <p class="soft small">One number, or two with a dash. The table is common practice.</p>
      <div class="fields">
        {adhesivePhases.map((phase) => (
          <TextField
            label={phaseNames[phase]}
            hint={`${labelUnits[phase].sign}; table ${labelText(phase, adhesive.seconds[phase])}`}
            {...entry(phase, `seconds.${phase}`)}
          />
        ))}
        <NumberField
          label="Least temperature"
          hint={`${degreesSign()}; table ${Math.round(fromCelsius(adhesive.leastCelsius))}`}
          {...entry('leastCelsius')}
        />
        <NumberField label="Times hold at" hint={degreesSign()} {...entry('atCelsius')} />
      </div>
    </details>
  );
}
