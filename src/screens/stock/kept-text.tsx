import { useState } from 'preact/hooks';
import { TextField } from '../../ui/fields.tsx';

interface Props {
  label: string;
  value: string;
  onAccept(text: string): void;
}

/** Words that are kept as they are typed; what is stored a moment later never gets in the way of typing. */
export function KeptText({ label, value, onAccept }: Props) {
  const [text, setText] = useState(value);
  return (
    <TextField
      label={label}
      value={text}
      onInput={(next) => {
        setText(next);
        onAccept(next.trim());
      }}
    />
  );
}
