import type { Problem } from '../../core/answer/problem.ts';
import { LengthField } from '../../ui/pad/length-field.tsx';
import type { Texts } from './read-texts.ts';

interface Props<E extends string> {
  /** The entries with what stands above each. */
  labels: Readonly<Partial<Record<E, string>>>;
  texts: Texts<E>;
  problems: ReadonlyMap<string, Problem>;
  onType(entry: E, text: string): void;
}

/** Lengths side by side, each kept as it is typed. */
export function LengthEntries<E extends string>({ labels, texts, problems, onType }: Props<E>) {
  return (
    <div class="fields">
      {(Object.keys(labels) as E[]).map((entry) => (
        <LengthField
          key={entry}
          label={labels[entry] ?? entry}
          value={texts[entry] ?? ''}
          problem={problems.get(entry)}
          onInput={(text) => onType(entry, text)}
        />
      ))}
    </div>
  );
}
