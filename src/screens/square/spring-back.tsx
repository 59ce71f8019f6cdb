import { badNumber } from '../../core/answer/bad-number.ts';
import { SettledNumber } from '../../ui/settled.tsx';

/** The part of a pull that a case gives back once the clamp is off. */
export function SpringBack({ value, onAccept }: { value: number; onAccept(share: number): void }) {
  return (
    <section class="card" aria-label="Spring-back">
      <SettledNumber
        label="Springs back"
        hint="% of the pull; common practice, yours to set"
        value={Math.round(value * 1e4) / 100}
        check={(percent) => badNumber('', 'This', percent, 'percent', { least: 0, most: 80 })}
        onAccept={(percent) => onAccept(percent / 100)}
      />
      <p class="small">
        Tighten a little at a time and keep your fingers out of the clamp. Pads under the jaws, across the diagonal.
      </p>
    </section>
  );
}
