import { useId } from 'preact/hooks';

interface Props {
  label: string;
  /** `2025-03-14`. */
  value: string;
  onAccept(day: string): void;
}

/** A day of the calendar, on the phone's own wheel; a half-typed one leaves the last good day. */
export function DayField({ label, value, onAccept }: Props) {
  const id = useId();
  return (
    <div class="field day">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={value}
        onInput={(event) => event.currentTarget.value !== '' && onAccept(event.currentTarget.value)}
      />
    </div>
  );
}
