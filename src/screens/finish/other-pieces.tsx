import { Tick } from '../../ui/fields.tsx';
import type { FormProps } from './form-props.ts';

/** Other pieces that get the same coats on the same days, out of the same cans. */
export function OtherPieces({ form, change, piece, all }: FormProps) {
  const others = all.filter(({ id, finishedAt }) => id !== piece.id && finishedAt === undefined);
  if (others.length === 0) return null;
  return (
    <details class="card">
      <summary>Other pieces at the same time</summary>
      {others.map(({ id, name }) => (
        <Tick
          label={name}
          checked={form.others.includes(id)}
          onInput={(on) => change({ others: on ? [...form.others, id] : form.others.filter((one) => one !== id) })}
        />
      ))}
    </details>
  );
}
