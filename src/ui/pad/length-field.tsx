import { useState } from 'preact/hooks';
import { Entry, type FieldProps } from '../fields.tsx';
import { units } from '../units.ts';
import { LengthPad } from './length-pad.tsx';

interface Props extends FieldProps {
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

/**
 * An entry for a length: the app's own pad opens while it has the focus. What is typed is for the screen to read, so that
 * nothing half-typed is lost.
 */
export function LengthField({ done, ...field }: Props) {
  /** The entry, while it has the focus. */
  const [open, setOpen] = useState<HTMLInputElement>();
  const [keyboard, setKeyboard] = useState(false);
  const next = () => {
    if (done) done.run();
    else if (open && !focusNext(open)) open.blur();
  };
  return (
    <Entry
      {...field}
      hint={field.hint ?? units.value.unit}
      inputMode={keyboard ? 'text' : 'none'}
      enterKeyHint={done ? 'done' : 'next'}
      spellcheck={false}
      onFocus={({ currentTarget }) => {
        setOpen(currentTarget);
        // Only once the pad stands can the page scroll the entry clear of it.
        requestAnimationFrame(() => currentTarget.scrollIntoView({ block: 'center' }));
      }}
      onBlur={() => {
        setOpen(undefined);
        setKeyboard(false);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter') next();
        if (event.key === 'Escape') setOpen(undefined);
      }}
    >
      {open && !keyboard && (
        <LengthPad
          value={field.value}
          onInput={field.onInput}
          onKeyboard={() => {
            // A keyboard comes up only for an entry that gets the focus, and within the tap.
            open.inputMode = 'text';
            open.blur();
            open.focus();
            setKeyboard(true);
          }}
          onAway={() => open.blur()}
          onNext={next}
          nextLabel={done?.label ?? 'Next'}
        />
      )}
    </Entry>
  );
}
