import { shop } from '../../app/shop.ts';
import type { Problem } from '../../core/answer/problem.ts';
import type { ReadingName } from '../../core/square/readings.ts';
import { Choice, optionsOf, Pick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { entryLabels } from './labels.ts';
import { entriesOf, type SquareForm } from './square-form.ts';
import { knownSquares } from './tool-error.ts';

/** Puts the focus, and with it the pad, on an entry. */
export function focusEntry(entry: ReadingName | undefined): void {
  document.querySelector<HTMLInputElement>(`[data-entry="${entry}"] input`)?.focus();
}

interface Props {
  form: SquareForm;
  problems: ReadonlyMap<string, Problem>;
  onChange(part: Partial<SquareForm>): void;
  onFocus(entry: ReadingName | undefined): void;
  /** True from the first key in an entry until it is left. */
  onTyping(on: boolean): void;
}

/** The readings, and what the maker must say where the readings alone can't tell. */
export function Entries({ form, problems, onChange, onFocus, onTyping }: Props) {
  const fromStick = form.way === 'stick' && form.situation !== 'layout';
  const sizeOnly = form.way !== 'readings' && form.situation !== 'layout';
  const squares = knownSquares(shop.value.references);
  return (
    <>
      {fromStick && (
        <p class="soft">Cut a stick to one diagonal, hold it along the other and measure how short it is.</p>
      )}
      <div class="fields">
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
              problem={problems.get(entry)}
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
          options={optionsOf({ diagonalAC: 'A to C', diagonalBD: 'B to D' })}
          onInput={(longer) => onChange({ longer })}
        />
      )}
      {sizeOnly && (
        <Choice
          label="Diagonals alone can’t tell: which holds?"
          value={form.farEnd}
          options={optionsOf({ parallel: 'Both ends lean alike', square: 'The left end is square' })}
          onInput={(farEnd) => onChange({ farEnd })}
        />
      )}
      {sizeOnly && form.farEnd === 'square' && squares.length > 0 && (
        <Pick
          label="Found square with"
          value={form.tool}
          options={optionsOf({ '': 'Not said', ...Object.fromEntries(squares.map(({ tool }) => [tool, tool])) })}
          onInput={(tool) => onChange({ tool })}
        />
      )}
    </>
  );
}
