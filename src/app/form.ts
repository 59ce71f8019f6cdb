import { useRef, useState } from 'preact/hooks';
import type { Outcome, Problem } from '../core/answer/problem.ts';
import { formReader } from '../ui/form-reader.ts';
import { units } from '../ui/units.ts';
import { useDraft } from './draft.ts';

/** What a form says: its value once nothing is wrong, and what is wrong at which entry. */
export interface FormRead<V> {
  readonly value: V | undefined;
  readonly problems: ReadonlyMap<string, Problem>;
}

/**
 * A form that is kept through a killed tab until what it says is stored. `carried` stands where nothing has been typed.
 * Undefined until it is read from the phone.
 */
export function useForm<F extends object, V>(key: string, carried: F, read: (form: F) => FormRead<V>) {
  // A bare number means another length in other units: each keeps its own texts.
  const draft = useDraft<Partial<F>>(`${key}-${units.value.unit}`, {});
  const [tried, setTried] = useState(false);
  const busy = useRef(false);
  const entries = useRef<HTMLElement>(null);
  if (!draft.value) return undefined;
  const form: F = { ...carried, ...draft.value };
  const { value, problems } = read(form);
  const change = (part: Partial<F>) => draft.edit((now) => ({ ...now, ...part }));
  const focus = (selector: string) =>
    requestAnimationFrame(() => entries.current?.querySelector<HTMLElement>(selector)?.focus());
  return {
    form,
    value,
    /** What holds the entries: the first bad one gets the focus. */
    entries,
    change,
    focus,
    /** What an entry for words or a number needs. What is wrong is said once storing was tried. */
    field: <N extends keyof F & string>(name: N) => ({
      value: (form[name] ?? '') as F[N] & string,
      problem: tried ? problems.get(name) : undefined,
      onInput: (text: string) => change({ [name]: text } as Partial<F>),
    }),
    /** Stores what is typed once nothing is wrong with it; then nothing is typed any more. */
    async store(write: (value: V) => Promise<unknown>): Promise<void> {
      if (busy.current) return;
      setTried(true);
      if (value === undefined) {
        focus('[aria-invalid="true"]');
        return;
      }
      busy.current = true;
      try {
        await write(value);
        // What was typed while a slow phone stored is for the next one.
        draft.edit(
          (now) =>
            Object.fromEntries(
              Object.entries(now).filter(([name, text]) => text !== form[name as keyof F]),
            ) as Partial<F>,
        );
        setTried(false);
      } catch {
        // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
      }
      busy.current = false;
    },
  };
}

export type Reads = Readonly<Record<string, (text: string) => Outcome<unknown>>>;
type Texts<R extends Reads> = { readonly [F in keyof R]?: string };
export type Values<R extends Reads> = { readonly [F in keyof R]: Exclude<ReturnType<R[F]>, Problem> };

/** Reads texts, each by itself. */
export function readTexts<R extends Reads>(reads: R, texts: Texts<R>): FormRead<Values<R>> {
  const { problems, read } = formReader();
  const values = Object.entries(reads).map(([name, parse]) => [name, read(name, parse(texts[name] ?? ''))]);
  return { value: problems.size > 0 ? undefined : (Object.fromEntries(values) as Values<R>), problems };
}

/** A form of such texts, empty at first. */
export const useTexts = <R extends Reads>(key: string, reads: R) =>
  useForm<Texts<R>, Values<R>>(key, {}, (texts) => readTexts(reads, texts));
