import { settledGrain } from '../../core/movement/joint-side.ts';
import type { Joint, Meeting } from '../../store/records/piece.ts';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { SizeEntries } from '../../ui/size-entries.tsx';
import { type Judged, judge } from './read-joint.ts';

interface Props {
  joint: Judged;
  onChange(part: Partial<Joint>): void;
}

const surfaces = optionsOf({ edge: 'edge', face: 'face', end: 'end', mitre: 'mitre' });
const grains = optionsOf({ along: 'along the joint', across: 'across it' });

/** How the two parts meet, for joints that are not as usual. */
export function MeetingEntries({ joint, onChange }: Props) {
  const { parts, meets, contact, seasons } = joint;
  const meet = (at: 0 | 1, part: Partial<Meeting>) => {
    const now = { ...meets[at], ...part };
    const one = { ...now, grain: settledGrain[now.surface] ?? now.grain };
    const other = meets[at === 0 ? 1 : 0];
    // A mitre meets a mitre.
    const mitred = one.surface === 'mitre';
    const fits: Meeting =
      mitred === (other.surface === 'mitre') ? other : { ...other, surface: mitred ? 'mitre' : 'face' };
    onChange({ meets: at === 0 ? [one, fits] : [fits, one] });
  };
  return (
    <details class="working">
      <summary>How they meet</summary>
      <SizeEntries<Pick<Joint, 'length' | 'breadth'>>
        of={contact}
        labels={{ length: 'Along the joint', breadth: 'Across it' }}
        check={(sizes) => judge({ ...joint.joint, ...sizes }, parts, seasons)}
        onChange={onChange}
      />
      {([0, 1] as const).map((at) => (
        <>
          <Choice
            label={`${parts[at].name} meets with its`}
            value={meets[at].surface}
            options={surfaces}
            onInput={(surface) => meet(at, { surface })}
          />
          {!settledGrain[meets[at].surface] && (
            <Choice
              label={`Grain of ${parts[at].name}`}
              value={meets[at].grain}
              options={grains}
              onInput={(grain) => meet(at, { grain })}
            />
          )}
        </>
      ))}
    </details>
  );
}
