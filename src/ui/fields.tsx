import type { InputHTMLAttributes } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import type { Problem } from '../core/answer/problem.ts';
import { Trouble } from './trouble.tsx';

export interface FieldProps {
  label: string;
  value: string;
  onInput(text: string): void;
  problem?: Problem | undefined;
  hint?: string | undefined;
}

/** An entry for words. */
export function TextField(props: FieldProps) {
  return <Entry {...props} inputMode="text" />;
}

/** An entry for a plain number; a comma is taken for a point. */
export function NumberField(props: FieldProps) {
  return <Entry {...props} inputMode="decimal" />;
}

type Input = Pick<
  InputHTMLAttributes,
  'inputMode' | 'enterKeyHint' | 'spellcheck' | 'onFocus' | 'onBlur' | 'onKeyDown' | 'children'
>;

/** Whatever is typed: its name, the entry itself, what is wrong with it. */
export function Entry({ label, onInput, problem, hint, children, ...input }: FieldProps & Input) {
  const id = useId();
  return (
    <div class={problem ? 'field bad' : 'field'}>
      <label for={id}>
        {label} {hint && <span class="soft small">{hint}</span>}
      </label>
      <input
        id={id}
        autocomplete="off"
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-trouble`}
        onInput={(event) => onInput(event.currentTarget.value)}
        {...input}
      />
      <Trouble of={problem} id={`${id}-trouble`} />
      {children}
    </div>
  );
}

/** What was just picked stands at once: the record follows a moment later, and a redrawing meanwhile must not turn it back. */
function usePicked<V>(value: V, onInput: (value: V) => void) {
  const [picked, setPicked] = useState(value);
  useEffect(() => setPicked(() => value), [value]);
  const pick = (next: V) => {
    setPicked(() => next);
    onInput(next);
  };
  return [picked, pick] as const;
}

export interface Option<V extends string> {
  readonly value: V;
  readonly label: string;
}

/** Options out of their labels by value, in this order. */
export const optionsOf = <V extends string>(labels: Readonly<Record<V, string>>): Option<V>[] =>
  (Object.entries(labels) as [V, string][]).map(([value, label]) => ({ value, label }));

interface ChoiceProps<V extends string> {
  label: string;
  value: V;
  options: readonly Option<V>[];
  onInput(value: V): void;
  problem?: Problem | undefined;
}

/** One of a few, all in sight. */
export function Choice<V extends string>({ label, value, options, onInput, problem }: ChoiceProps<V>) {
  const name = useId();
  const [picked, pick] = usePicked(value, onInput);
  return (
    <fieldset class="field">
      <legend>{label}</legend>
      <div class="choices">
        {options.map((option) => (
          <label>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === picked}
              onChange={() => pick(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      <Trouble of={problem} />
    </fieldset>
  );
}

/** One of many. */
export function Pick<V extends string>({ label, value, options, onInput, problem }: ChoiceProps<V>) {
  const id = useId();
  const [picked, pick] = usePicked(value, onInput);
  return (
    <div class={problem ? 'field bad' : 'field'}>
      <label for={id}>{label}</label>
      <select id={id} value={picked} onChange={(event) => pick(event.currentTarget.value as V)}>
        {options.map((option) => (
          <option value={option.value} selected={option.value === picked}>
            {option.label}
          </option>
        ))}
      </select>
      <Trouble of={problem} />
    </div>
  );
}

/** Yes or no. */
export function Tick({ label, checked, onInput }: { label: string; checked: boolean; onInput(on: boolean): void }) {
  const [picked, pick] = usePicked(checked, onInput);
  return (
    <label class="tick">
      <input type="checkbox" checked={picked} onChange={(event) => pick(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  );
}
