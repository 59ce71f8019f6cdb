import { useDraft } from '../../app/draft.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { alignmentPositions } from '../../core/movement/alignment-positions.ts';
import { type AlignmentKind, alignmentSize } from '../../core/movement/alignment-size.ts';
import { Choice } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { useEntries } from './entries.ts';
import type { ReadJoint } from './read-joint.ts';

const kinds = [
  { value: 'loose-tenon', label: 'Loose tenons' },
  { value: 'dowel', label: 'Dowels' },
  { value: 'spline', label: 'Splines' },
] as const;

/** Loose tenons, dowels or splines along a seam or a mitre: where, how thick, how deep. */
export function Alignment({ joint }: { joint: ReadJoint }) {
  const kind = useDraft<AlignmentKind>(`align-kind-1-${joint.joint.id}`, 'loose-tenon');
  const entries = useEntries(`align-1-${joint.joint.id}`, { width: 40, spacing: 200, clear: 15 });
  if (!entries || !kind.value) return null;
  const { lengths, field } = entries;
  const positions = isProblem(lengths) ? lengths : alignmentPositions({ ...lengths, length: joint.contact.length });
  const size = alignmentSize({
    kind: kind.value,
    thickness: Math.min(...joint.parts.map(({ thickness }) => thickness)),
    angle: joint.meets[0].surface === 'mitre' ? 45 : 90,
  });
  const atEntry = isProblem(positions) && ['width', 'spacing', 'clear'].includes(positions.field);
  return (
    <details class="working">
      <summary>Tenons, dowels or splines to align it</summary>
      <div class="fields">
        <LengthField label="Width of one along the joint" {...field('width', positions)} />
        <LengthField label="Apart at most" {...field('spacing', positions)} />
        <LengthField label="Clear of ends and each other" {...field('clear', positions)} />
      </div>
      <Choice label="Kind" value={kind.value} options={kinds} onInput={kind.set} />
      {isProblem(positions) ? (
        <Trouble of={atEntry ? undefined : positions} />
      ) : (
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
          <dl class="facts">
            <dt>Thickness</dt>
            <dd>
              <Length mm={size.value.thickness} />
            </dd>
            <dt>Depth in each part</dt>
            <dd>
              <Length mm={size.value.depth} />
            </dd>
            <dt>Middle, from the {joint.meets[0].surface === 'mitre' ? 'inner corner' : 'face'}</dt>
            <dd>
              <Length mm={size.value.offset} />
            </dd>
          </dl>
          <ShowWorking of={size.working} />
        </div>
      )}
    </details>
  );
}
