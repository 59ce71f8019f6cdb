import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';

export type Reads = Readonly<Record<string, (text: string) => Outcome<unknown>>>;
export type Values<R extends Reads> = { readonly [F in keyof R]: Exclude<ReturnType<R[F]>, { kind: 'problem' }> };

/**
 * A small form: what is typed is kept through a killed tab, what is wrong is shown once storing it was tried. Undefined
 * until it is read from the phone.
 */
export function useTyped<R extends Reads>(key: string, reads: R) {
  const draft = useDraft<Partial<Record<keyof R, string>>>(key, {});
  const [tried, setTried] = useState(false);
  const form = draft.value;
  if (!form) return undefined;
  const read = (name: keyof R) => (reads[name] as R[string])(form[name] ?? '');
  return {
    field(name: keyof R) {
      const got = read(name);
      return {
        value: form[name] ?? '',
        problem: tried && isProblem(got) ? got : undefined,
        onInput: (text: string) => draft.set({ ...form, [name]: text }),
      };
    },
    /** Stores what was typed when all of it is good, and empties the form. */
    async store(write: (values: Values<R>) => Promise<void>): Promise<void> {
      const values = Object.keys(reads).map((name) => [name, read(name)] as const);
      setTried(true);
      if (values.some(([, got]) => isProblem(got))) return;
      try {
        await write(Object.fromEntries(values) as Values<R>);
        draft.clear();
        setTried(false);
      } catch {
        // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
      }
    },
  };
}
