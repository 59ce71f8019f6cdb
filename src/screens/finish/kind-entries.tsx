import { likely, type Range } from '../../core/answer/range.ts';
import type { FinishMethod } from '../../core/finishing/finish-amount.ts';
import { finishes } from '../../tables/finishes.ts';
import { Choice, NumberField, optionsOf, Pick, TextField } from '../../ui/fields.tsx';
import { sayRange } from '../../ui/say-range.ts';
import type { FormProps } from './form-props.ts';
import { coatsText, insideCoatsText, kindOf } from './read-finish-form.ts';

const methods: Readonly<Record<FinishMethod, string>> = {
  rag: 'Rag',
  brush: 'Brush',
  roller: 'Roller',
  pad: 'Pad',
  spray: 'Spray',
};

/** Beyond three times what is usual, the unit was likely another. */
const isFarFrom = (typed: Range, usual: Range) =>
  likely(typed) > 3 * likely(usual) || likely(typed) < likely(usual) / 3;

/** Which kind, how many coats, how far a can goes, and how it is put on. */
export function KindEntries({ form, read, plan, at, field, change }: FormProps) {
  const kind = kindOf(form);
  return (
    <>
      <Pick
        label="Finish"
        value={form.kind}
        options={finishes.map(({ id, name }) => ({ value: id, label: name }))}
        onInput={(next) => change({ kind: next })}
      />
      <div class="fields">
        <NumberField
          label="Coats"
          hint={`usually ${sayRange(kind.coats, 'count')}`}
          {...field('coats', coatsText(form))}
        />
        {(plan?.area.value.total.inside || at('insideCoats')) && (
          <NumberField label="Inside coats" hint="0 leaves it bare" {...field('insideCoats', insideCoatsText(form))} />
        )}
      </div>
      <TextField
        label="Spreading rate"
        hint={`on the can; empty: ${sayRange(kind.coverage, 'm2PerLitre')}`}
        {...field('rate')}
      />
      {read.label.coverage && isFarFrom(read.label.coverage, kind.coverage) && (
        <p class="soft">
          <b>Look again:</b> {sayRange(read.label.coverage, 'm2PerLitre')} is far from usual for this kind.
        </p>
      )}
      <Choice
        label="Put on with"
        value={read.method}
        options={optionsOf(methods)}
        onInput={(method) => change({ method })}
      />
      <Choice
        label="The wood is"
        value={form.wood}
        options={optionsOf({ bare: 'Bare', sealed: 'Sealed or primed' })}
        onInput={(wood) => change({ wood })}
      />
    </>
  );
}
