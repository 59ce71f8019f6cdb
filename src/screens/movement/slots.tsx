import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Fixing } from '../../store/records/piece.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';
import { FloatingFound } from './floating-found.tsx';
import { fixingOf, jointSlots, slottedPart } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';

interface Props {
  joint: Judged;
  seasons: Seasons;
  onChange(change: (now: Fixing) => Fixing): void;
}

/** Elongated slots for the screws or pegs of a joint that floats: one keeps still, the others let the wide part move. */
export function Slots({ joint, seasons, onChange }: Props) {
  const pegs = joint.joint.kind === 'breadboard';
  const fastener = pegs ? 'Peg' : 'Screw';
  const fixing = fixingOf(joint);
  const entry = (name: 'count' | 'inset' | 'shank' | 'head' | 'margin') => {
    const changed = (now: Fixing, value: number): Fixing => ({
      ...now,
      [name]: value,
      ...(name === 'count' && { fixed: Math.min(now.fixed, Math.max(0, Math.ceil(value) - 1)) }),
    });
    return {
      value: fixing[name] ?? 0,
      check: (value: number) => {
        const wrong =
          name === 'count' ? badNumber(name, 'It', value, 'count', { least: 1, most: 40, whole: true }) : undefined;
        const found = wrong ?? jointSlots(joint, changed(fixing, value), seasons);
        return isProblem(found) ? found : undefined;
      },
      onAccept: (value: number) => onChange((now) => changed(now, value)),
    };
  };
  return (
    <section class="task" aria-label={`Slots in ${slottedPart(joint).name}`}>
      <FloatingFound joint={joint} seasons={seasons} />
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
