import { isProblem } from '../../core/answer/problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Joint, Meeting } from '../../store/records/piece.ts';
import { Choice } from '../../ui/fields.tsx';
import { SettledLength } from '../../ui/settled.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { type ReadJoint, verdictOf } from './read-joint.ts';

interface Props {
  joint: ReadJoint;
  seasons: Seasons;
  onChange(part: Partial<Joint>): void;
}

const surfaces = (['edge', 'face', 'end', 'mitre'] as const).map((value) => ({ value, label: value }));
const grains = [
  { value: 'along', label: 'along the joint' },
  { value: 'across', label: 'across it' },
] as const;

/** How the two parts meet, for joints that are not as usual. */
export function MeetingEntries({ joint, seasons, onChange }: Props) {
  const { parts, meets, contact } = joint;
  const problemOf = (change: Partial<ReadJoint>) => {
    const verdict = verdictOf({ ...joint, ...change }, seasons);
    return isProblem(verdict) ? verdict : undefined;
  };
  const withMeeting = (at: 0 | 1, part: Partial<Meeting>): readonly [Meeting, Meeting] => {
    const changed = { ...meets[at], ...part };
    // What an edge or an end is leaves its grain only one way to run; a mitre meets a mitre.
    const whole: Meeting =
      changed.surface === 'edge'
        ? { ...changed, grain: 'along' }
        : changed.surface === 'end'
          ? { ...changed, grain: 'across' }
          : changed;
    const other = meets[at === 0 ? 1 : 0];
    const mitred = whole.surface === 'mitre';
    const fits: Meeting =
      mitred === (other.surface === 'mitre') ? other : { surface: mitred ? 'mitre' : 'face', grain: other.grain };
    return at === 0 ? [whole, fits] : [fits, whole];
  };
  return (
    <details class="working">
      <summary>How they meet</summary>
      <div class="fields">
        <SettledLength
          label="Along the joint"
          value={contact.length}
          check={(length) => problemOf({ contact: { ...contact, length } })}
          onAccept={(length) => onChange({ length })}
        />
        {contact.breadth !== undefined && (
          <SettledLength
            label="Across it"
            value={contact.breadth}
            check={(breadth) => problemOf({ contact: { ...contact, breadth } })}
            onAccept={(breadth) => onChange({ breadth })}
          />
        )}
      </div>
      {([0, 1] as const).map((at) => (
        <>
          <Choice
            label={`${parts[at].name} meets with its`}
            value={meets[at].surface}
            options={surfaces}
            onInput={(surface) => onChange({ meets: withMeeting(at, { surface }) })}
          />
          {(meets[at].surface === 'face' || meets[at].surface === 'mitre') && (
            <Choice
              label={`Grain of ${parts[at].name}`}
              value={meets[at].grain}
              options={grains}
              onInput={(grain) => onChange({ meets: withMeeting(at, { grain }) })}
            />
          )}
        </>
      ))}
      <Trouble of={problemOf({})} />
    </details>
  );
}
