import { adhesives } from '../../tables/adhesives.ts';
import { NumberField, Pick } from '../../ui/fields.tsx';
import { degreesSign } from '../../ui/temperature.ts';
import { withAdhesive } from './glue-form.ts';
import type { FormProps } from './setup-form.tsx';

const options = adhesives.map(({ id, name }) => ({ value: id, label: name }));

/** Which kind of glue, and how warm the shop is. */
export function AdhesiveEntries({ form, read, change, entry, glueups }: FormProps) {
  return (
    <>
      <div class="fields">
        <Pick
          label="Adhesive"
          value={form.adhesive}
          options={options}
          onInput={(kind) => change(withAdhesive(kind, glueups))}
        />
        <NumberField label="Temperature" hint={degreesSign()} {...entry('celsius')} />
      </div>
      <p class="soft small">Gap filling: {read.adhesive.gapFilling}.</p>
    </>
  );
}
