import type { Fixing } from '../../store/records/piece.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';
import { FloatingFound } from './floating-found.tsx';
import { fixingOf, inPanel, jointSlots, slottedPart } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';

interface Props {
  joint: Judged;
  onChange(change: (now: Fixing) => Fixing): void;
}

/** Elongated slots for the screws or pegs of a joint that floats: one keeps still, the others let the wide part move. */
export function Slots({ joint, onChange }: Props) {
  const pegs = inPanel(joint);
  const fastener = pegs ? 'Peg' : 'Screw';
  const fixing = fixingOf(joint);
  const entry = (name: 'count' | 'inset' | 'shank' | 'head' | 'margin') => {
    const changed = (now: Fixing, value: number): Fixing => ({
      ...now,
      [name]: value,
      ...(name === 'count' && { fixed: Math.min(now.fixed, Math.max(0, value - 1)) }),
    });
    return {
      value: fixing[name] ?? 0,
      check: (value: number) => jointSlots(joint, changed(fixing, value)),
      onAccept: (value: number) => onChange((now) => changed(now, value)),
    };
  };
  return (
    <section class="task" aria-label={`Slots in ${slottedPart(joint).name}`}>
      <FloatingFound joint={joint} />
      <details class="working">
        <summary>Change the {fastener.toLowerCase()}s</summary>
        <div class="fields">
          <SettledNumber label={`How many ${fastener.toLowerCase()}s`} {...entry('count')} />
          <SettledLength label="First from the end" {...entry('inset')} />
          <SettledLength label={`${pegs ? 'Peg' : 'Shank'} diameter`} {...entry('shank')} />
          <SettledLength label="Room at each end" {...entry('margin')} />
          <Pick
            label="Fixed"
            value={String(fixing.fixed)}
            options={Array.from({ length: fixing.count }, (_, at) => ({
              value: String(at),
              label: `${fastener} ${at + 1}`,
            }))}
            onInput={(fixed) => onChange((now) => ({ ...now, fixed: Number(fixed) }))}
          />
          {fixing.head !== undefined && <SettledLength label="Head diameter" {...entry('head')} />}
        </div>
        {!pegs && (
          <Tick
            label="Counterbored heads"
            checked={fixing.head !== undefined}
            onInput={(on) => onChange(({ head: _, ...now }) => (on ? { ...now, head: now.shank * 2 } : now))}
          />
        )}
      </details>
    </section>
  );
}
