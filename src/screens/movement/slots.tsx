import { isProblem, problem } from '../../core/answer/problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Fixing } from '../../store/records/piece.ts';
import { Pick, Tick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { jointSlots, movingPart, usualFixing } from './joint-slots.ts';
import type { ReadJoint } from './read-joint.ts';
import { SlotsDrawing } from './slots-drawing.tsx';

const badCount = problem('count', 'Between 1 and 40, a whole number.');

interface Props {
  joint: ReadJoint;
  seasons: Seasons;
  onChange(fixing: Fixing): void;
}

/** Elongated slots for the screws or pegs of a joint that floats: one keeps still, the others let the wide part move. */
export function Slots({ joint, seasons, onChange }: Props) {
  const pegs = joint.joint.kind === 'breadboard';
  const moving = movingPart(joint) ?? 0;
  const slotted = joint.parts[pegs ? moving : moving === 0 ? 1 : 0].name;
  const fastener = pegs ? 'Peg' : 'Screw';
  const fixing = joint.joint.fixing ?? usualFixing(joint.contact.length);
  const slots = jointSlots(joint, fixing, seasons);
  const entry = (name: 'count' | 'inset' | 'shank' | 'head' | 'margin') => {
    const changed = (value: number): Fixing => ({
      ...fixing,
      [name]: value,
      ...(name === 'count' && { fixed: Math.min(fixing.fixed, Math.max(0, Math.ceil(value) - 1)) }),
    });
    return {
      value: fixing[name] ?? 0,
      check: (value: number) => {
        if (name === 'count' && !(Number.isInteger(value) && value >= 1 && value <= 40)) return badCount;
        const found = jointSlots(joint, changed(value), seasons);
        return isProblem(found) ? found : undefined;
      },
      onAccept: (value: number) => onChange(changed(value)),
    };
  };
  return (
    <section class="slots" aria-label={`Slots in ${slotted}`}>
      <h3>Slots in {pegs ? `the tenons of ${slotted}` : slotted}</h3>
      {isProblem(slots) ? (
        <Trouble of={slots} />
      ) : (
        <>
          <SlotsDrawing slots={slots.value} length={joint.contact.length} />
          <table>
            <thead>
              <tr>
                <th scope="col">{fastener}</th>
                <th scope="col">From the end</th>
                <th scope="col">Slot</th>
                {fixing.head !== undefined && <th scope="col">Counterbore</th>}
              </tr>
            </thead>
            <tbody>
              {slots.value.map((slot, at) => (
                <tr>
                  <th scope="row">{at + 1}</th>
                  <td>
                    <Length mm={slot.position} />
                  </td>
                  <td>
                    {slot.fixed ? (
                      <>round, keeps still</>
                    ) : (
                      <>
                        <Length mm={slot.width} bare /> × <b>{<Length mm={slot.length} />}</b>
                      </>
                    )}
                  </td>
                  {slot.counterbore && (
                    <td>
                      <Length mm={slot.counterbore.width} bare /> × <Length mm={slot.counterbore.length} />
                    </td>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
          <p class="soft small">
            {fastener}s stand off the middle of a slot as far as the wood has further to go one way than the other.
            Snug, not tight: it must slide. No glue but at the one that keeps still.
          </p>
          <ShowWorking of={slots.working} />
        </>
      )}
      <div class="fields">
        <SettledNumber label={`How many ${fastener.toLowerCase()}s`} {...entry('count')} />
        <SettledLength label="First from the end" {...entry('inset')} />
        <SettledLength label={pegs ? 'Peg diameter' : 'Shank diameter'} {...entry('shank')} />
        <SettledLength label="Room at each end" {...entry('margin')} />
        <Pick
          label="Which keeps still"
          value={String(fixing.fixed)}
          options={Array.from({ length: fixing.count }, (_, at) => ({
            value: String(at),
            label: `${fastener} ${at + 1}`,
          }))}
          onInput={(fixed) => onChange({ ...fixing, fixed: Number(fixed) })}
        />
        {fixing.head !== undefined && <SettledLength label="Head diameter" {...entry('head')} />}
      </div>
      {!pegs && (
        <Tick
          label="Heads sunk in a counterbore"
          checked={fixing.head !== undefined}
          onInput={(on) => {
            const { head: _, ...rest } = fixing;
            onChange(on ? { ...rest, head: fixing.shank * 2 } : rest);
          }}
        />
      )}
    </section>
  );
}
