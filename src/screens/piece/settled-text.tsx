import { useState } from 'preact/hooks';
import { badPartName } from '../../core/lumber/check-part.ts';
import { TextField } from '../../ui/fields.tsx';

interface Props {
  label: string;
  value: string;
  onAccept(text: string): void;
}

/** A name that is kept as it is typed; an empty one stays on view with the reason, and the last good one is kept. */
export function SettledText({ label, value, onAccept }: Props) {
  const [text, setText] = useState(value);
  const problem = badPartName(text);
  return (
    <TextField
      label={label}
      value={text}
      problem={problem}
      onInput={(next) => {
        setText(next);
        if (!badPartName(next)) onAccept(next.trim());
      }}
    />
  );
}
