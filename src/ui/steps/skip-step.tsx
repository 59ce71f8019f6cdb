import { useState } from 'preact/hooks';
import { TextField } from '../fields.tsx';
import { Fold } from '../fold.tsx';

/** Leaves a step out, with the reason. */
export function SkipStep({ onSkip }: { onSkip(reason: string): void }) {
  const [reason, setReason] = useState('');
  return (
    <Fold label="Skip this step">
      <div class="fields">
        <TextField label="Reason" value={reason} onInput={setReason} />
        <button type="button" class="button" disabled={reason.trim() === ''} onClick={() => onSkip(reason.trim())}>
          Skip it
        </button>
      </div>
    </Fold>
  );
}
