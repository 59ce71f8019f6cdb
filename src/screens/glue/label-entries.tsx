import type { AdhesivePhase } from '../../core/gluing/adhesive.ts';
import { NumberField, TextField } from '../../ui/fields.tsx';
import { degreesSign, fromCelsius } from '../../ui/temperature.ts';
import type { LabelEntry } from './glue-form.ts';
import { labelPhases, labelUnits } from './label-times.ts';
import type { ReadGlue } from './read-glue-form.ts';
import type { FormProps } from './setup-form.tsx';

const names: Readonly<Record<AdhesivePhase, string>> = {
  open: 'Open time',
  closed: 'Closed time',
  clamp: 'Clamp time',
  rest: 'Rest before planing',
  cure: 'Full strength',
};

/** What the label says: it goes before the table, and is kept for this kind. */
export function LabelEntries({ form, change, trouble, read }: FormProps & { read: ReadGlue }) {
  const set = (entry: LabelEntry, text: string) => change({ label: { ...form.label, [entry]: text } });
  const typed = Object.values(form.label).filter((text) => text.trim() !== '').length;
  return (
    <details class="card" open={typed > 0 || undefined}>
      <summary>What the label says{typed > 0 && ` (${typed} typed in)`}</summary>
      <p class="soft small">
        One number, or two with a dash. What is left empty is taken from the table, as common practice has it.
      </p>
      <div class="fields">
        {labelPhases.map((phase) => (
          <TextField
            label={names[phase]}
            hint={`${labelUnits[phase].sign}; table ${tableHint(phase, read)}`}
            value={form.label[phase] ?? ''}
            problem={trouble(`label.${phase}`)}
            onInput={(text) => set(phase, text)}
          />
        ))}
        <NumberField
          label="Least temperature"
          hint={`${degreesSign()}; table ${Math.round(fromCelsius(read.adhesive.leastCelsius))}`}
          value={form.label.leastCelsius ?? ''}
          problem={trouble('label.leastCelsius')}
          onInput={(text) => set('leastCelsius', text)}
        />
        <NumberField
          label="Times hold at"
          hint={degreesSign()}
          value={form.label.atCelsius ?? ''}
          problem={trouble('label.atCelsius')}
          onInput={(text) => set('atCelsius', text)}
        />
      </div>
    </details>
  );
}

function tableHint(phase: AdhesivePhase, { adhesive }: ReadGlue): string {
  const { least, most } = adhesive.seconds[phase];
  const each = labelUnits[phase].seconds;
  return least === most ? String(least / each) : `${least / each}–${most / each}`;
}
