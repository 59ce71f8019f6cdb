import { useId, useRef, useState } from 'preact/hooks';
import type { Problem } from '../../core/answer/problem.ts';
import { Trouble } from '../trouble.tsx';
import { units } from '../units.ts';
import { LengthPad } from './length-pad.tsx';

interface Props {
  label: string;
  /** As typed; the screen parses it, so that nothing half-typed is lost. */
  value: string;
  onInput(text: string): void;
  problem?: Problem | undefined;
  hint?: string | undefined;
  /** What the pad's last key does; without it, it goes to the next entry. */
  done?: { label: string; run(): void } | undefined;
}

/** Focuses the entry after this one; false when this is the last. */
function focusNext(from: HTMLElement): boolean {
  const all = [...document.querySelectorAll<HTMLElement>('main input, main select, main textarea')];
  const next = all.slice(all.indexOf(from) + 1).find((entry) => entry.offsetParent !== null);
  next?.focus();
  return next !== undefined;
}

/** An entry for a length: the app's own pad opens while it has the focus. */
export function LengthField({ label, value, onInput, problem, hint, done }: Props) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [open, setOpen] = useState(false);
  const [keyboard, setKeyboard] = useState(false);
  const next = () => {
    if (done) done.run();
    else if (input.current && !focusNext(input.current)) input.current.blur();
  };
  return (
    <div class={problem ? 'field bad' : 'field'}>
      <label for={id}>
        {label} <span class="soft small">{hint ?? units.value.unit}</span>
      </label>
      <input
        ref={input}
        id={id}
        value={value}
        inputMode={keyboard ? 'text' : 'none'}
        enterKeyHint={done ? 'done' : 'next'}
        autocomplete="off"
        spellcheck={false}
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-trouble`}
        onInput={(event) => onInput(event.currentTarget.value)}
        onFocus={(event) => {
          setOpen(true);
          const field = event.currentTarget;
          // Only once the pad stands can the page scroll the entry clear of it.
          requestAnimationFrame(() => field.scrollIntoView({ block: 'center' }));
        }}
        onBlur={() => {
          setOpen(false);
          setKeyboard(false);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') next();
          if (event.key === 'Escape') setOpen(false);
        }}
      />
      <Trouble of={problem} id={`${id}-trouble`} />
      {open && !keyboard && (
        <LengthPad
          value={value}
          onInput={onInput}
          onKeyboard={() => {
            setKeyboard(true);
            input.current?.blur();
            requestAnimationFrame(() => input.current?.focus());
          }}
          onAway={() => input.current?.blur()}
          onNext={next}
          nextLabel={done?.label ?? 'Next'}
        />
      )}
    </div>
  );
}
