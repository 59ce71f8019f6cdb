import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from './button.tsx';
import { TextField } from './fields.tsx';
import { Fold } from './fold.tsx';

interface Props {
  label: string;
  /** What the reason is asked as. */
  ask: string;
  action: string;
  /** Called with the reason; a promise that rejects leaves it as it was typed. */
  onReason(reason: string): unknown;
  /** What else is asked. */
  children?: ComponentChildren;
}

/** What is only done for a reason, and folded away until then. */
export function WithReason({ label, ask, action, onReason, children }: Props) {
  const [reason, setReason] = useState('');
  const say = async () => {
    try {
      await onReason(reason.trim());
      setReason('');
    } catch {
      // Not stored: the shell keeps the change and shows it.
    }
  };
  return (
    <Fold label={label}>
      <div class="fields">
        {children}
        <TextField label={ask} value={reason} onInput={setReason} />
        <Button disabled={reason.trim() === ''} onClick={say}>
          {action}
        </Button>
      </div>
    </Fold>
  );
}
