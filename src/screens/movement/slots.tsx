import type { Fixing } from '../../store/records/piece.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import { SettledNumber } from '../../ui/settled.tsx';
import { SizeEntries } from '../../ui/size-entries.tsx';
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
  const counted = (now: Fixing, count: number): Fixing => ({
    ...now,
    count,
    fixed: Math.min(now.fixed, Math.max(0, count - 1)),
  });
  return (
    <section class="task" aria-label={`Slots in ${slottedPart(joint).name}`}>
      <FloatingFound joint={joint} />
      <details class="working">
        <summary>Change the {fastener.toLowerCase()}s</summary>
        <div class="fields">
          <SettledNumber
            label={`How many ${fastener.toLowerCase()}s`}
            value={fixing.count}
            check={(count) => jointSlots(joint, counted(fixing, count))}
            onAccept={(count) => onChange((now) => counted(now, count))}
          />
          <Pick
            label="Fixed"
            value={String(fixing.fixed)}
            options={Array.from({ length: fixing.count }, (_, at) => ({
              value: String(at),
              label: `${fastener} ${at + 1}`,
            }))}
            onInput={(fixed) => onChange((now) => ({ ...now, fixed: Number(fixed) }))}
          />
        </div>
        <SizeEntries
          of={fixing}
          labels={{
            inset: 'First from the end',
            shank: `${pegs ? 'Peg' : 'Shank'} diameter`,
            margin: 'Room at each end',
            head: 'Head diameter',
          }}
          check={(next) => jointSlots(joint, next)}
          onChange={(part) => onChange((now) => ({ ...now, ...part }))}
        />
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
