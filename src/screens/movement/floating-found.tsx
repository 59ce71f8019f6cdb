import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { movesOver } from '../../core/movement/moves.ts';
import type { Attached } from '../../store/records/piece.ts';
import { Answer } from '../../ui/answer.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { attachTop } from './attach-top.ts';
import { fixingOf, inPanel, needsSlots, screwPositions } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';
import { SlotsFound } from './slots-found.tsx';

/** How to set what holds a joint that must move: its slots, or its buttons or brackets. */
export function FloatingFound({ joint }: { joint: Judged }) {
  if (!needsSlots(joint)) return null;
  const { attached } = joint.joint;
  if (attached) return <AttachmentFound joint={joint} attached={attached} />;
  return (
    <>
      <SlotsFound joint={joint} />
      {inPanel(joint) && <PanelEdges joint={joint} />}
    </>
  );
}

function AttachmentFound({ joint, attached }: { joint: Judged; attached: Attached }) {
  const set = attachTop(joint, attached);
  if (isProblem(set)) return <Trouble of={set} />;
  return (
    <Answer
      label={attached.kind === 'button' ? 'Gap in the groove today' : 'Screw from its stop today'}
      of={mm(set.value.setting)}
      working={set.working}
    >
      <p>
        <Say phrase={set.value.instruction} />
      </p>
    </Answer>
  );
}

/** How far the panel stands out beyond its end piece, or falls short of it: most at the edge furthest from the fixed peg. */
function PanelEdges({ joint }: { joint: Judged }) {
  const { length } = joint.contact;
  const fixing = fixingOf(joint);
  const fixedAt = screwPositions(fixing, length)[fixing.fixed] ?? Number.NaN;
  const edge = movesOver(joint.verdict, length, Math.max(fixedAt, length - fixedAt));
  // What is wrong with the pegs is said at their slots.
  if (isProblem(edge)) return null;
  return (
    <div class="answer">
      <Facts
        rows={[
          ['Panel stands out when damp', mm(edge.value.swell)],
          ['Panel falls short when dry', mm(edge.value.shrink)],
        ]}
      />
      <ShowWorking of={edge.working} />
    </div>
  );
}
