import { isProblem } from '../../core/answer/problem.ts';
import { mixFor } from '../../core/finishing/two-part-mix.ts';
import { Choice, NumberField, optionsOf, Tick } from '../../ui/fields.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import type { MixText } from './finish-form.ts';
import type { FormProps } from './form-props.ts';
import { MixShown } from './mix-shown.tsx';
import type { ReadMix } from './read-mix.ts';

/** Two parts: how much of each for the first coat, in batches that are used up in time, and what a rest is good for. */
export function MixEntries({ form, read, plan, at, change }: FormProps) {
  const { mix } = form;
  const set = (part: Partial<MixText>) => change({ mix: { ...mix, ...part } });
  const entry = (
    name: 'a' | 'b' | 'densityA' | 'densityB' | 'potLife' | 'pace' | 'left',
    label: string,
    hint?: string,
  ) => (
    <NumberField
      label={label}
      hint={hint}
      value={mix[name]}
      problem={at(`mix.${name}`)}
      onInput={(text) => set({ [name]: text })}
    />
  );
  return (
    <section class="card">
      <Tick label="Two parts, mixed before use" checked={mix.on} onInput={(on) => set({ on })} />
      {mix.on && (
        <>
          <div class="fields">
            {entry('a', 'Parts of A')}
            {entry('b', 'to parts of B')}
          </div>
          <Choice
            label="Measured"
            value={mix.by}
            options={optionsOf({ volume: 'By volume', mass: 'On a scale' })}
            onInput={(by) => set({ by })}
          />
          {mix.by === 'mass' && (
            <div class="fields">
              {entry('densityA', 'Density of A', 'kg/L')}
              {entry('densityB', 'Density of B', 'kg/L')}
            </div>
          )}
          <div class="fields">
            {entry('potLife', 'Pot life', 'minutes')}
            {entry('pace', 'You need for one coat', 'minutes')}
          </div>
          {read.mix && plan && <CoatMix of={read.mix} litres={plan.amount.value.coats[0]?.likely ?? 0} />}
          <h3>What is a rest good for?</h3>
          <Choice
            label="Left of"
            value={mix.leftPart}
            options={optionsOf({ A: 'Part A', B: 'Part B' })}
            onInput={(leftPart) => set({ leftPart })}
          />
          {entry('left', 'What is left', units.value.unit === 'in' ? 'fl oz' : 'ml')}
          {read.mix?.rest && (
            <div aria-live="polite">
              <MixShown of={read.mix.rest} />
            </div>
          )}
        </>
      )}
    </section>
  );
}

function CoatMix({ of: { ratio, batches }, litres }: { of: ReadMix; litres: number }) {
  const count = batches?.value ?? 1;
  const each = ratio && mixFor('all', litres / count, ratio);
  if (!each || isProblem(each)) return null;
  return (
    <div class="answer" aria-live="polite">
      <span class="soft">For the first coat</span>
      <span class="figure words">{count === 1 ? 'One batch' : `${count} batches, each`}</span>
      <MixShown of={each} />
      {batches && <ShowWorking of={batches.working} label="Why so many batches" />}
    </div>
  );
}
