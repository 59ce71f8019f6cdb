import { useDraft } from '../../app/draft.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { units } from '../../ui/units.ts';
import { type Lengths, readLengths } from './read-lengths.ts';
import { WoodTrouble } from './wood-trouble.tsx';

/**
 * A few lengths to ask the core with, kept as typed through a killed tab; each with its label and what it is at first, mm.
 * Undefined until they are read.
 */
export function useEntries<K extends string>(
  key: string,
  entries: Readonly<Record<K, readonly [label: string, mm: number, hint?: string]>>,
) {
  const names = Object.keys(entries) as K[];
  const fresh = Object.fromEntries(names.map((name) => [name, formatLength(entries[name][1], units.value)]));
  // A bare number means another length in other units: each keeps its own text.
  const draft = useDraft(`${key}-${units.value.unit}`, fresh as Record<K, string>);
  const texts = draft.value;
  if (!texts) return undefined;
  return {
    /** What the core finds, or the first entry that is no length. */
    ask<T>(find: (lengths: Lengths<K>) => Outcome<T>): Outcome<T> {
      const lengths = readLengths(texts, units.value.unit);
      return isProblem(lengths) ? lengths : find(lengths);
    },
    /** The entries with what is wrong at each; any other trouble stands below them. */
    fields(found: unknown) {
      const trouble = isProblem(found) ? found : undefined;
      return (
        <>
          <div class="fields">
            {names.map((name) => (
              <LengthField
                label={entries[name][0]}
                hint={entries[name][2]}
                value={texts[name]}
                problem={trouble?.field === name ? trouble : undefined}
                onInput={(text) => draft.set({ ...texts, [name]: text })}
              />
            ))}
          </div>
          {trouble && !(trouble.field in entries) && <WoodTrouble of={trouble} />}
        </>
      );
    },
  };
}
