import { useDraft } from '../../app/draft.ts';
import { parseNumber } from '../../core/answer/parse-number.ts';
import { isProblem, type Outcome, within } from '../../core/answer/problem.ts';
import { NumberField } from '../../ui/fields.tsx';
import { readLength, writeLength } from '../../ui/length-text.ts';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { units } from '../../ui/units.ts';
import { WoodTrouble } from './wood-trouble.tsx';

/** An entry's label and what it holds at first; without that it is empty, and may stay so. */
export type Entry = readonly [label: string, start?: number | undefined, hint?: string];
export type Entries<K extends string> = Readonly<Record<K, Entry>>;

const lengths = { Field: LengthField, write: writeLength, read: readLength };
export const numbers = { Field: NumberField, write: String, read: parseNumber };

/**
 * A few lengths, mm, or numbers to ask the core with, kept as typed through a killed tab. Undefined until they are read from the
 * phone.
 */
export function useEntries<K extends string>(
  key: string,
  entries: Entries<K>,
  { Field, write, read }: typeof lengths | typeof numbers = lengths,
) {
  const names = Object.keys(entries) as K[];
  const textsOf = (value: (name: K) => number | undefined) => {
    const text = (of: number | undefined) => (of === undefined ? '' : write(of));
    return Object.fromEntries(names.map((name) => [name, text(value(name))])) as Record<K, string>;
  };
  // A bare number means another length in other units: each keeps its own text.
  const draft = useDraft<Partial<Record<K, string>>>(Field === LengthField ? `${key}-${units.value.unit}` : key, {});
  const typed = draft.value;
  if (!typed) return undefined;
  // What was never typed follows the record that it comes from.
  const texts: Record<K, string> = { ...textsOf((name) => entries[name][1]), ...typed };
  return {
    /** What the core finds, or the first entry that can't be read; nothing while one that is needed is empty. */
    ask<T, N extends K = K>(
      find: (values: Readonly<Record<N, number> & Partial<Record<K, number>>>) => Outcome<T> | undefined,
      needed: readonly N[] = names as N[],
    ): Outcome<T> | undefined {
      const values: Partial<Record<K, number>> = {};
      for (const name of names) {
        const start = entries[name][1];
        if (texts[name] === '' && start === undefined) continue;
        // Its text may be rounded to what the maker reads.
        const value = typed[name] === undefined && start !== undefined ? start : read(texts[name]);
        if (isProblem(value)) return within(value, name);
        values[name] = value;
      }
      return needed.every((name) => name in values) ? find(values as Parameters<typeof find>[0]) : undefined;
    },
    /** Puts these values in the place of what was typed, nothing where there is none. */
    fill(values: Readonly<Partial<Record<K, number>>>) {
      draft.set(textsOf((name) => values[name]));
    },
    /** The entries with what is wrong at each; any other trouble stands below them. */
    fields(found: unknown) {
      const trouble = isProblem(found) ? found : undefined;
      return (
        <>
          <div class="fields">
            {names.map((name) => (
              <Field
                key={name}
                label={entries[name][0]}
                hint={entries[name][2]}
                value={texts[name]}
                problem={trouble?.field === name ? trouble : undefined}
                onInput={(text) => draft.set({ ...typed, [name]: text } as typeof texts)}
              />
            ))}
          </div>
          {trouble && !(trouble.field in entries) && <WoodTrouble of={trouble} />}
        </>
      );
    },
  };
}
