import { Button } from '../../ui/button.tsx';
import { Choice, NumberField, optionsOf } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { emptySeam, type Meets, type SeamTexts } from './glue-form.ts';
import type { FormProps } from './setup-form.tsx';

const meets = optionsOf<Meets>({
  edge: 'Edges of a panel',
  'mitre-frame': 'Mitred frame',
  'mitre-case': 'Mitred case',
  other: 'Other joints',
});

/** The seams of this stage: alike ones in one row. */
export function SeamEntries({ form, change, trouble }: FormProps) {
  const { seams } = form;
  const entry = (at: number, name: keyof SeamTexts) => ({
    value: seams[at]?.[name] ?? '',
    problem: trouble(`seams.${at}.${name}`),
    onInput: (text: string) => change({ seams: seams.with(at, { ...(seams[at] ?? emptySeam), [name]: text }) }),
  });
  return (
    <>
      {seams.map((_, at) => (
        <fieldset class="card">
          <legend class="hidden-visually">Seams {at + 1}</legend>
          <div class="fields">
            <LengthField label="Seam length" {...entry(at, 'length')} />
            <LengthField label="Seam thickness" {...entry(at, 'width')} />
            <NumberField label="How many alike" {...entry(at, 'count')} />
          </div>
          {seams.length > 1 && <Button onClick={() => change({ seams: seams.toSpliced(at, 1) })}>Delete these</Button>}
        </fieldset>
      ))}
      <Button onClick={() => change({ seams: [...seams, emptySeam] })}>Seams of another size</Button>
      <Choice label="How they meet" value={form.meets} options={meets} onInput={(value) => change({ meets: value })} />
    </>
  );
}
