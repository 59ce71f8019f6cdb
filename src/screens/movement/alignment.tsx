import { useDraft } from '../../app/draft.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { alignmentPositions } from '../../core/movement/alignment-positions.ts';
import { type AlignmentKind, alignmentSize } from '../../core/movement/alignment-size.ts';
import { Facts } from '../../ui/facts.tsx';
import { Choice } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { useEntries } from './entries.tsx';
import type { ReadJoint } from './read-joint.ts';

const kinds = [
  { value: 'loose-tenon', label: 'Loose tenons' },
  { value: 'dowel', label: 'Dowels' },
  { value: 'spline', label: 'Splines' },
] as const;

/** Loose tenons, dowels or splines along a seam or a mitre: where, how thick, how deep. */
export function Alignment({ joint }: { joint: ReadJoint }) {
  const kind = useDraft<AlignmentKind>(`align-kind-1-${joint.joint.id}`, 'loose-tenon');
  const entries = useEntries(`align-1-${joint.joint.id}`, {
    width: ['Width of one along the joint', 40],
    spacing: ['Apart at most', 200],
    clear: ['Clear of ends and each other', 15],
  });
  if (!entries || !kind.value) return null;
  const positions = entries.ask((lengths) => alignmentPositions({ ...lengths, length: joint.contact.length }));
  const mitred = joint.meets[0].surface === 'mitre';
  const size = alignmentSize({
    kind: kind.value,
    thickness: Math.min(...joint.parts.map(({ thickness }) => thickness)),
    angle: mitred ? 45 : 90,
  });
  return (
    <details class="working">
      <summary>Tenons, dowels or splines to align it</summary>
      {entries.fields(positions)}
      <Choice label="Kind" value={kind.value} options={kinds} onInput={kind.set} />
      {!isProblem(positions) && (
        <div class="answer" aria-live="polite">
          <span class="soft">Middles, from one end</span>
          <p>{positions.value.positions.map((at, index) => [index > 0 && ', ', <Length mm={at} bare />])}</p>
          <ShowWorking of={positions.working} label="How these are spread" />
        </div>
      )}
      {isProblem(size) ? (
        <Trouble of={size} />
      ) : (
        <div class="answer">
          <Facts
            rows={[
              ['Thickness', mm(size.value.thickness)],
              ['Depth in each part', mm(size.value.depth)],
              [`Middle, from the ${mitred ? 'inner corner' : 'face'}`, mm(size.value.offset)],
            ]}
          />
          <ShowWorking of={size.working} />
        </div>
      )}
    </details>
  );
}
