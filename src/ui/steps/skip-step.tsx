import { useState } from 'preact/hooks';
import { TextField } from '../fields.tsx';

/** Leaves a step out, with the reason. */
export function SkipStep({ onSkip }: { onSkip(reason: string): void }) {
  const [reason, setReason] = useState('');
  return (
    <details class="working">
      <summary>Skip this step</summary>
      <div class="fields">
        <TextField label="Reason" value={reason} onInput={setReason} />
        <button type="button" class="button" disabled={reason.trim() === ''} onClick={() => onSkip(reason.trim())}>
          Skip it
        </button>
      </div>
    </details>
  );
}
