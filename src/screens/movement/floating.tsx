import type { Attached, Joint } from '../../store/records/piece.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { optionsOf, Pick } from '../../ui/fields.tsx';
import { SizeEntries } from '../../ui/size-entries.tsx';
import { attachmentSizes, attachments, attachTop, usualAttached } from './attach-top.ts';
import { FloatingFound } from './floating-found.tsx';
import { GrooveTask } from './groove-task.tsx';
import { needsSlots, usualFixing } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';
import { Slots } from './slots.tsx';

const slotted = 'slots';
const holds = optionsOf({ [slotted]: 'Screws in slots', ...attachments });

interface Props {
  joint: Judged;
  onChange(change: (now: Joint) => Joint): void;
}

/** How to let a joint move that must: grooves for a panel; slots; for a top also buttons and brackets. */
export function Floating({ joint, onChange }: Props) {
  const { kind, attached } = joint.joint;
  const { length } = joint.contact;
  if (kind === 'groove') return <GrooveTask part={joint.parts[0]} seasons={joint.seasons} />;
  if (!needsSlots(joint)) return null;
  return (
    <>
      {kind === 'top' && (
        <Pick
          label="Hold it with"
          value={attached?.kind ?? slotted}
          options={holds}
          onInput={(by) =>
            onChange((now) => withOptional(now, 'attached', by === slotted ? undefined : usualAttached(by, length)))
          }
        />
      )}
      {attached ? (
        <>
          <FloatingFound joint={joint} />
          <SizeEntries
            key={attached.kind}
            of={attached}
            labels={attachmentSizes}
            check={(next) => attachTop(joint, next)}
            onChange={(part) =>
              onChange((now) => ({ ...now, attached: { ...(now.attached ?? attached), ...part } as Attached }))
            }
          />
        </>
      ) : (
        <Slots
          joint={joint}
          onChange={(change) => onChange((now) => ({ ...now, fixing: change(now.fixing ?? usualFixing(length)) }))}
        />
      )}
    </>
  );
}
