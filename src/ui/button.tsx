import type { ComponentChildren } from 'preact';

interface Props {
  /** How it stands out: `big` in step flows, `now` for what is next, `plain` for what seldom is. */
  look?: 'big' | 'now' | 'big now' | 'plain' | '';
  disabled?: boolean;
  /** Failures are its own to handle. */
  onClick(): unknown;
  children: ComponentChildren;
}

/** Does something here; what leads to another screen is a link. */
export const Button = ({ look = '', disabled = false, onClick, children }: Props) => (
  <button type="button" class={`button ${look}`} disabled={disabled} onClick={() => void onClick()}>
    {children}
  </button>
);
