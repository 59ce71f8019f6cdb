import { useDraft } from '../../app/draft.ts';
import { shop } from '../../app/shop.ts';
import { joined } from '../../core/answer/joined.ts';
import { isProblem, within } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { alignmentPositions } from '../../core/movement/alignment-positions.ts';
import { type AlignmentKind, alignmentSize } from '../../core/movement/alignment-size.ts';
import type { Joint } from '../../store/records/piece.ts';
import { Facts } from '../../ui/facts.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';
import { planShop } from '../breakdown/problem-from-records.ts';
import { useEntries } from './entries.tsx';
import { laterCuts } from './later-cuts.ts';
import { mortises } from './mortises.ts';
import type { Judged } from './read-joint.ts';

const kinds = optionsOf({ 'loose-tenon': 'Loose tenons', dowel: 'Dowels', spline: 'Splines' });

interface Props {
  joint: Judged;
  /** All of the piece. */
  joints: readonly Joint[];
}

/** Loose tenons, dowels or splines along a seam or a mitre. */
export const Alignment = (props: Props) => (
  <Fold label="Tenons, dowels or splines">
    <AlignmentTask {...props} />
  </Fold>
);

/** Where they go, clear of later cuts; how thick, how deep, and how wide their mortises. */
function AlignmentTask({ joint, joints }: Props) {
  const { id } = joint.joint;
  const later = laterCuts(joint, joints, planShop(shop.value).crosscutKerf);
  const kind = useDraft<AlignmentKind>(`align-kind-1-${id}`, 'loose-tenon');
  const cuts = useDraft<readonly string[]>(
    `align-cuts-1-${id}-${units.value.unit}`,
    later.crosscuts.map((at) => formatLength(at, units.value)),
  );
  const entries = useEntries(`align-2-${id}`, {
    width: ['Width of one', 40],
    spacing: ['Apart at most', 200],
    clear: ['Clear all round', 15],
    start: ['Bevel at the start', later.bevel],
    end: ['Bevel at the end', later.bevel],
  });
  if (!entries || !kind.value || !cuts.value) return null;
  const typed = cuts.value;
  const placed = entries.ask((lengths) => {
    const crosscuts: number[] = [];
    for (const [at, text] of typed.entries()) {
      const cut = parseLength(text, units.value.unit);
      if (isProblem(cut)) return within(cut, `crosscuts.${at}`);
      crosscuts.push(cut);
    }
    const found = alignmentPositions({ ...lengths, length: joint.contact.length, crosscuts, reach: later.reach });
    if (isProblem(found)) return found;
    const slots = mortises(joint, found.value, lengths.width);
    return isProblem(slots) ? slots : { found, slots };
  });
  const badCut = isProblem(placed) && placed.field.startsWith('crosscuts.') ? placed : undefined;
  const mitred = joint.meets[0].surface === 'mitre';
  const thickness = Math.min(...joint.parts.map((part) => part.thickness));
  const size = alignmentSize({ kind: kind.value, thickness, angle: mitred ? 45 : 90 });
  return (
    <>
      {entries.fields(badCut ? undefined : placed)}
      <div class="fields">
        {[...typed, ''].map((text, at) => (
          <LengthField
            label={`Later cut ${at + 1}`}
            hint="Middle, from the start"
            value={text}
            problem={badCut?.field === `crosscuts.${at}` ? badCut : undefined}
            onInput={(next) => cuts.set([...typed].toSpliced(at, 1, next).filter((cut) => cut !== ''))}
          />
        ))}
      </div>
      <Choice label="Kind" value={kind.value} options={kinds} onInput={kind.set} />
      {placed && !isProblem(placed) && (
        <div class="answer" aria-live="polite">
          <span class="soft">Middle, from the start</span>
          <ol class="rows">
            {placed.slots.value.map(({ position, length }) => (
              <li>
                <b>
                  <Length mm={position} />
                </b>
                <span>
                  mortise <Length mm={length} />
                </span>
              </li>
            ))}
          </ol>
          <p class="soft small">
            {joint.verdict.value.advice === 'glue' ? 'Snug.' : 'Snug in the middle; the others wide, no glue there.'}
          </p>
          <ShowWorking of={joined(placed.found.working, placed.slots.working)} />
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
    </>
  );
}
