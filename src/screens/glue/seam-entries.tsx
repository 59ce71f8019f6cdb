import { Choice, NumberField } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { emptySeam, type Meets, type SeamTexts } from './glue-form.ts';
import type { FormProps } from './setup-form.tsx';

const meets: readonly { value: Meets; label: string }[] = [
  { value: 'edge', label: 'Edges of a panel' },
  { value: 'mitre-frame', label: 'Mitred frame' },
  { value: 'mitre-case', label: 'Mitred case' },
  { value: 'other', label: 'Other joints' },
];

/** The seams of this stage: alike ones in one row. */
export function SeamEntries({ form, change, trouble }: FormProps) {
  const { seams } = form;
  const replace = (at: number, part: Partial<SeamTexts>) =>
    change({ seams: seams.map((row, index) => (index === at ? { ...row, ...part } : row)) });
  return (
    <>
      {seams.map((row, at) => (
        <fieldset class="card">
          <legend class="hidden-visually">Seams {at + 1}</legend>
          <div class="fields">
            <LengthField
              label="Seam length"
              value={row.length}
              problem={trouble(`seams.${at}.length`)}
              onInput={(length) => replace(at, { length })}
            />
            <LengthField
              label="Seam thickness"
              value={row.width}
              problem={trouble(`seams.${at}.width`)}
              onInput={(width) => replace(at, { width })}
            />
            <NumberField
              label="How many alike"
              value={row.count}
              problem={trouble(`seams.${at}.count`)}
              onInput={(count) => replace(at, { count })}
            />
          </div>
          {seams.length > 1 && (
            <button
              type="button"
              class="button"
              onClick={() => change({ seams: seams.filter((_, index) => index !== at) })}
            >
              Leave these out
            </button>
          )}
        </fieldset>
      ))}
      <button type="button" class="button" onClick={() => change({ seams: [...seams, emptySeam] })}>
        Seams of another size
      </button>
      <Choice label="How they meet" value={form.meets} options={meets} onInput={(value) => change({ meets: value })} />
    </>
  );
}
