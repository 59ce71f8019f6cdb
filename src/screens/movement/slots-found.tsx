import { isProblem } from '../../core/answer/problem.ts';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { fixingOf, inPanel, jointSlots, slottedPart } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';
import { SlotsDrawing } from './slots-drawing.tsx';

/** Where each slot lies, how long it is, and where the screw or peg sits in it today. */
export function SlotsFound({ joint }: { joint: Judged }) {
  const pegs = inPanel(joint);
  const slotted = slottedPart(joint).name;
  const fastener = pegs ? 'Peg' : 'Screw';
  const fixing = fixingOf(joint);
  const slots = jointSlots(joint, fixing);
  return (
    <>
      <h2>Slots in {pegs ? `the tenons of ${slotted}` : slotted}</h2>
      {isProblem(slots) ? (
        <Trouble of={slots} />
      ) : (
        <>
          <SlotsDrawing
            name={`Slots in ${slotted}`}
            slots={slots.value}
            shank={fixing.shank}
            length={joint.contact.length}
          />
          <ol class="rows slots">
            {slots.value.map((slot, at) => (
              <li>
                <span>
                  {fastener} {at + 1}, <Length mm={slot.position} /> from the end
                </span>
                <span>
                  {slot.fixed ? (
                    'round hole, fixed'
                  ) : (
                    <>
                      slot <Length mm={fixing.shank} bare /> ×{' '}
                      <b>
                        <Length mm={slot.length} />
                      </b>
                    </>
                  )}
                </span>
                {!slot.fixed && (
                  <span class="soft small">
                    from the {fastener.toLowerCase()} today <Length mm={slot.towardsFixed} /> towards{' '}
                    {fastener.toLowerCase()} {fixing.fixed + 1}, <Length mm={slot.awayFromFixed} /> away
                  </span>
                )}
                {slot.counterbore && (
                  <span class="soft small">
                    counterbore <Length mm={slot.counterbore.width} bare /> × <Length mm={slot.counterbore.length} />
                  </span>
                )}
              </li>
            ))}
          </ol>
          <p class="soft small">Snug, not tight: it must slide. Glue only at the fixed one.</p>
          <ShowWorking of={slots.working} />
        </>
      )}
    </>
  );
}
