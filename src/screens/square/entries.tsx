import { shop } from '../../app/shop.ts';
import { type Problem, problem } from '../../core/answer/problem.ts';
import { Choice, Pick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { entryLabels } from './labels.ts';
import { type Entry, entriesOf, type SquareForm } from './square-form.ts';
import { knownSquares } from './tool-error.ts';

/** Puts the focus, and with it the pad, on an entry. */
export function focusEntry(entry: Entry | undefined): void {
  document.querySelector<HTMLInputElement>(`[data-entry="${entry}"] input`)?.focus();
}

interface Props {
  form: SquareForm;
  /** What is wrong with an entry by itself. */
  problems: ReadonlyMap<string, Problem>;
  /** What is wrong with one entry beside the others. */
  trouble: { readonly at: Entry | undefined; readonly problem: Problem } | undefined;
  suspect: Entry | undefined;
  onChange(part: Partial<SquareForm>): void;
  onFocus(entry: Entry | undefined): void;
  /** True from the first key in an entry until it is left. */
  onTyping(on: boolean): void;
}

/** The readings, and what the maker must say where the readings alone can't tell. */
export function Entries({ form, problems, trouble, suspect, onChange, onFocus, onTyping }: Props) {
  const fromStick = form.way === 'stick' && form.situation !== 'layout';
  const sizeOnly = form.way !== 'readings' && form.situation !== 'layout';
  const squares = knownSquares(shop.value.references);
  const wrong = (entry: Entry) =>
    problems.get(entry) ??
    (trouble?.at === entry
      ? trouble.problem
      : suspect === entry
        ? problem(entry, 'Doesn’t fit the others. Measure it again.')
        : undefined);
  return (
    <>
      {fromStick && (
        <p class="soft">Cut a stick to one diagonal, hold it along the other and measure how short it is.</p>
      )}
      <div class={trouble?.at || suspect || problems.size > 0 ? 'fields in-trouble' : 'fields'}>
        {entriesOf(form).map((entry) => (
          <div
            key={entry}
            data-entry={entry}
            onFocusIn={() => onFocus(entry)}
            onFocusOut={() => {
              onFocus(undefined);
              onTyping(false);
            }}
          >
            <LengthField
              label={entryLabels[entry]}
              value={form.texts[entry] ?? ''}
              problem={wrong(entry)}
              onInput={(text) => {
                onTyping(true);
                onChange({ texts: { ...form.texts, [entry]: text } });
              }}
            />
          </div>
        ))}
      </div>
      {fromStick && (
        <Choice
          label="The longer diagonal"
          value={form.longer}
          options={[
            { value: 'diagonalAC', label: 'A to C' },
            { value: 'diagonalBD', label: 'B to D' },
          ]}
          onInput={(longer) => onChange({ longer })}
        />
      )}
      {sizeOnly && (
        <Choice
          label="Diagonals alone can’t tell: which holds?"
          value={form.farEnd}
          options={[
            { value: 'parallel', label: 'Both ends lean alike' },
            { value: 'square', label: 'The left end is square' },
          ]}
          onInput={(farEnd) => onChange({ farEnd })}
        />
      )}
      {sizeOnly && form.farEnd === 'square' && squares.length > 0 && (
        <Pick
          label="Found square with"
          value={form.tool}
          options={[{ value: '', label: 'Not said' }, ...squares.map(({ tool }) => ({ value: tool, label: tool }))]}
          onInput={(tool) => onChange({ tool })}
        />
      )}
    </>
  );
}
