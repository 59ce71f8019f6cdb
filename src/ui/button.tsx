import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';

interface Props {
  /** How it stands out: `big` in step flows, `now` for what is next, `plain` for what seldom is. */
  look?: 'big' | 'now' | 'big now' | 'plain' | '';
  disabled?: boolean;
  /** Says what it is for, where its words alone don't. */
  label?: string;
  /** Failures are its own to handle. */
  onClick(): unknown;
  children: ComponentChildren;
}

/** Does something here; what leads to another screen is a link. Pressed again it waits until that is done. */
export function Button({ look = '', disabled = false, label, onClick, children }: Props) {
  const busy = useRef(false);
  const press = async () => {
    if (busy.current) return;
    busy.current = true;
    try {
      await onClick();
    } finally {
      busy.current = false;
    }
  };
  return (
    <button type="button" class={`button ${look}`} disabled={disabled} aria-label={label} onClick={press}>
      {children}
    </button>
  );
}
