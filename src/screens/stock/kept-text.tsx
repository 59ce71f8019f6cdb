import { useState } from 'preact/hooks';
import { TextField } from '../../ui/fields.tsx';

interface Props {
  label: string;
  value: string;
  hint?: string;
  onAccept(text: string): void;
}

/** Words that are kept as they are typed; what is stored a moment later never gets in the way of typing. */
export function KeptText({ label, value, hint, onAccept }: Props) {
  const [text, setText] = useState(value);
  return (
    <TextField
      label={label}
      hint={hint}
      value={text}
      onInput={(next) => {
        setText(next);
        onAccept(next.trim());
      }}
    />
  );
}
