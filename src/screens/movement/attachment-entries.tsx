import type { Attached } from '../../store/records/piece.ts';
import { SettledLength } from '../../ui/settled.tsx';
import { type AttachedBy, attachTop } from './attach-top.ts';
import type { Judged } from './read-joint.ts';

export const attachments: Readonly<Record<AttachedBy, string>> = {
  button: 'Buttons in a groove',
  'slotted-bracket': 'Slotted brackets',
  'swivel-bracket': 'Swivel brackets',
};

const labels: Readonly<Record<string, string>> = {
  grooveDepth: 'Depth of a groove',
  slot: 'Slot length',
  shank: 'Shank diameter',
  swing: 'Whole swing across the grain',
  distance: 'From where the top is fixed',
  margin: 'Room to spare',
  hold: 'Must stay in the groove',
};

interface Props {
  joint: Judged;
  attached: Attached;
  onChange(attached: Attached): void;
}

/** The sizes of the buttons or brackets. */
export function AttachmentEntries({ joint, attached, onChange }: Props) {
  const sizes = new Map(Object.entries(attached));
  return (
    <div class="fields">
      {Object.entries(labels).flatMap(([name, label]) => {
        const value = sizes.get(name);
        if (typeof value !== 'number') return [];
        const changed = (size: number): Attached => ({ ...attached, [name]: size });
        return [
          <SettledLength
            key={name}
            label={label}
            value={value}
            check={(size) => attachTop(joint, changed(size))}
            onAccept={(size) => onChange(changed(size))}
          />,
        ];
      })}
    </div>
  );
}
